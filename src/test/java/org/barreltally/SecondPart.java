package org.barreltally;

import org.junit.platform.suite.api.ExcludeClassNamePatterns;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

@Suite
@SelectPackages("org.barreltally")
@ExcludeClassNamePatterns("org\\.barreltally\\.[a-l].*Test")
final class SecondPart {}
