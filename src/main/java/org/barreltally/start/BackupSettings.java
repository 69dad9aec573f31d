package org.barreltally.start;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the environment says about backups.
 *
 * @param folder where they go, absolute
 * @param copy a second place for them, absolute; empty for none
 * @param everyHours made by itself when the last one is so old; 0 for never
 * @param keep how many are kept
 * @param warnDays the start page warns when the last one is older
 */
public record BackupSettings(
    Path folder, Optional<Path> copy, int everyHours, int keep, int warnDays) {

  private static final String FOLDER = "BARRELTALLY_BACKUPS";
  private static final String COPY = "BARRELTALLY_BACKUP_COPY";
  private static final String EVERY = "BARRELTALLY_BACKUP_EVERY_HOURS";
  private static final String KEEP = "BARRELTALLY_BACKUP_KEEP";
  private static final String WARN = "BARRELTALLY_BACKUP_WARN_DAYS";

  /**
   * Reads the settings.
   *
   * @param data the data folder, in which backups lie unless another folder is set
   * @throws CannotStart when a value cannot be used; the sentence names the variable
   */
  static BackupSettings from(Map<String, String> environment, Path data) {
    Path folder = path(environment, FOLDER).orElse(data.resolve("backups"));
    Optional<Path> copy = path(environment, COPY);
    if (copy.filter(folder::equals).isPresent()) {
      throw new CannotStart(COPY + " must be another folder than that of the backups.");
    }
    return new BackupSettings(
        folder,
        copy,
        number(environment, EVERY, 24, 0, 8784),
        number(environment, KEEP, 14, 1, 1000),
        number(environment, WARN, 7, 1, 366));
  }

  private static Optional<String> text(Map<String, String> environment, String name) {
    return Optional.ofNullable(environment.get(name)).map(String::strip).filter(t -> !t.isEmpty());
  }

  private static Optional<Path> path(Map<String, String> environment, String name) {
    try {
      return text(environment, name).map(t -> Path.of(t).toAbsolutePath().normalize());
    } catch (InvalidPathException e) {
      throw new CannotStart(name + " is not a path that this system can use.", e);
    }
  }

  private static int number(
      Map<String, String> environment, String name, int otherwise, int least, int most) {
    Optional<String> text = text(environment, name);
    if (text.isEmpty()) {
      return otherwise;
    }
    if (text.get().matches("[0-9]{1,6}")) {
      int number = Integer.parseInt(text.get());
      if (number >= least && number <= most) {
        return number;
      }
    }
    throw new CannotStart("%s must be a whole number from %d to %d.".formatted(name, least, most));
  }

  /** In the words of the framework's configuration. */
  Map<String, String> properties() {
    Map<String, String> properties = new LinkedHashMap<>();
    properties.put("barreltally.backups.folder", folder.toString());
    copy.ifPresent(path -> properties.put("barreltally.backups.copy", path.toString()));
    properties.put("barreltally.backups.every-hours", Integer.toString(everyHours));
    properties.put("barreltally.backups.keep", Integer.toString(keep));
    properties.put("barreltally.backups.warn-days", Integer.toString(warnDays));
    return properties;
  }
}
