package org.barreltally.documents;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The maker from {@code barreltally.maker}, {@code .address} (lines parted by semicolons), {@code
 * .best-by-months}, {@code .public-address} and {@code .label-sheet}, the same at every instant.
 */
@ApplicationScoped
@DefaultBean
class ConfiguredMaker implements MakerOnPapers {

  private final Maker maker;

  ConfiguredMaker(
      @ConfigProperty(name = "barreltally.maker", defaultValue = "Your sugarhouse") String name,
      @ConfigProperty(
              name = "barreltally.address",
              defaultValue = "Set your name and address in settings")
          String address,
      @ConfigProperty(name = "barreltally.best-by-months") Optional<Integer> bestByMonths,
      @ConfigProperty(name = "barreltally.public-address") Optional<String> publicAddress,
      @ConfigProperty(name = "barreltally.label-sheet") Optional<String> labelSheet) {
    this.maker =
        new Maker(
            name,
            List.of(address.split("\\s*;\\s*")),
            bestByMonths.orElse(null),
            publicAddress.orElse(null),
            labelSheet.orElse(null));
  }

  @Override
  public Maker at(Instant printed) {
    return maker;
  }
}
