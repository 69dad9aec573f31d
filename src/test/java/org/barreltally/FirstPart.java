package org.barreltally;

import org.junit.platform.suite.api.IncludeClassNamePatterns;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

/**
 * About half of all tests, for one of the two Java machines in which they run beside one another;
 * each starts Quarkus and a database once.
 */
@Suite
@SelectPackages("org.barreltally")
@IncludeClassNamePatterns(FirstPart.CLASSES)
final class FirstPart {

  /**
   * Those of the packages from {@code barrels} to {@code lots}, and those that are in none of them.
   */
  static final String CLASSES = "org\\.barreltally\\.[A-Za-l].*Test";

  private FirstPart() {}
}
