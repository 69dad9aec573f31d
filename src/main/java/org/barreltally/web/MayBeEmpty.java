package org.barreltally.web;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A body of which every field may be left out: one that is missing is taken for {@code {}}. Without
 * it a missing body is refused.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PARAMETER)
public @interface MayBeEmpty {}
