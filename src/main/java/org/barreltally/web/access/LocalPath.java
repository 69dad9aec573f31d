package org.barreltally.web.access;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.regex.Pattern;

/** Where to go after signing in: only within this program, so that no link leads elsewhere. */
public final class LocalPath {

  private static final int LENGTH_MAX = 500;

  /** One slash, then no second slash or backslash, and nothing but visible ASCII throughout. */
  private static final Pattern LOCAL = Pattern.compile("/(?![/\\\\])[!-\\[\\]-~]*");

  private LocalPath() {}

  /** {@code wanted} if it is a path here and no way back to signing in or out, else the start. */
  public static String of(String wanted) {
    return wanted != null
            && wanted.length() <= LENGTH_MAX
            && LOCAL.matcher(wanted).matches()
            && !wanted.startsWith("/sign-")
            && isAddress(wanted)
        ? wanted
        : "/";
  }

  private static boolean isAddress(String wanted) {
    try {
      return new URI(wanted).getScheme() == null;
    } catch (URISyntaxException e) {
      return false;
    }
  }
}
