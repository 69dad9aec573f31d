package org.barreltally;

import org.junit.platform.suite.api.ExcludeClassNamePatterns;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

/** All tests that are not in {@link FirstPart}. */
@Suite
@SelectPackages("org.barreltally")
@ExcludeClassNamePatterns(FirstPart.CLASSES)
final class SecondPart {

  private SecondPart() {}
}
