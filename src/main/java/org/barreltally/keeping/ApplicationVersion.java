package org.barreltally.keeping;

import java.util.Optional;

/** The version of the built program. */
final class ApplicationVersion {

  private ApplicationVersion() {}

  /** As the build named it, or {@code development} where it runs unpacked. */
  static String text() {
    return Optional.ofNullable(ApplicationVersion.class.getPackage().getImplementationVersion())
        .orElse("development");
  }
}
