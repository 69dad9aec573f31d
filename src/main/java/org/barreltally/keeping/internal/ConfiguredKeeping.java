package org.barreltally.keeping.internal;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.barreltally.keeping.KeepingSettings;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The settings of this installation, as the start read them from the environment. */
class ConfiguredKeeping {

  @Produces
  @Singleton
  KeepingSettings settings(
      @ConfigProperty(name = "barreltally.backups.folder") String folder,
      @ConfigProperty(name = "barreltally.backups.copy") Optional<String> copy,
      @ConfigProperty(name = "barreltally.backups.every-hours") int everyHours,
      @ConfigProperty(name = "barreltally.backups.keep") int keep,
      @ConfigProperty(name = "barreltally.backups.warn-days") int warnDays) {
    return new KeepingSettings(
        Path.of(folder).toAbsolutePath().normalize(),
        copy.map(text -> Path.of(text).toAbsolutePath().normalize()),
        Duration.ofHours(everyHours),
        keep,
        Duration.ofDays(warnDays));
  }
}
