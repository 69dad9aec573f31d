package org.barreltally.documents;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.barreltally.measure.ColorClass;

/** Used where no capability knows of awards: cards show the ribbon a request names, or none. */
@DefaultBean
@ApplicationScoped
class NoRibbons implements RibbonLines {

  @Override
  public Optional<String> on(String container, ColorClass grade) {
    return Optional.empty();
  }
}
