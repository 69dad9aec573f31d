package org.barreltally;

import java.util.regex.Pattern;

/** Which addresses are pages, and which of them look alike. */
public final class PagePaths {

  /** Papers, tables and what is not read as a page. */
  private static final Pattern NO_PAGE =
      Pattern.compile(
          "/(api|assets|q|openapi|table)(/.*)?|.*\\.(pdf|csv|svg|ics|crt|pem|zip)(\\?.*)?|.*[?&]as=csv.*");

  private static final Pattern ONE_OF_MANY = Pattern.compile("[^/]*[0-9A-Z][^/]*");

  private PagePaths() {}

  /** Whether a person reads what is there as a page. */
  public static boolean isPage(String path) {
    return !NO_PAGE.matcher(path).matches();
  }

  /** Pages that differ only in whose they are have one shape. */
  public static String shape(String path) {
    String[] parts = path.split("\\?", 2);
    StringBuilder shape = new StringBuilder();
    for (String segment : parts[0].split("/")) {
      shape.append('/').append(ONE_OF_MANY.matcher(segment).matches() ? "*" : segment);
    }
    if (parts.length > 1) {
      for (String parameter : parts[1].split("&")) {
        shape.append('?').append(parameter.replaceFirst("=.*", ""));
      }
    }
    return shape.toString();
  }
}
