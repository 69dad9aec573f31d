package org.barreltally;

import org.junit.platform.suite.api.IncludeClassNamePatterns;
import org.junit.platform.suite.api.SelectPackages;
import org.junit.platform.suite.api.Suite;

@Suite
@SelectPackages("org.barreltally")
@IncludeClassNamePatterns("org\\.barreltally\\.[a-l].*Test")
final class FirstPart {}
