package org.barreltally.web;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/** The header If-Match (RFC 9110, 13.1.1): which versions of a record the writer has read. */
public final class IfMatch {

  private IfMatch() {}

  /** The versions without their quotes; null where any version is right. */
  public static Set<String> versions(String header) {
    if (header == null || header.strip().equals("*")) {
      return null;
    }
    return Arrays.stream(header.split(","))
        .map(tag -> tag.strip().replaceFirst("^W/", "").replace("\"", ""))
        .collect(Collectors.toUnmodifiableSet());
  }
}
