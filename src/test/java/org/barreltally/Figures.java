package org.barreltally;

import java.util.regex.Pattern;

/** Looks for a figure that stands by itself: not for its digits within an id, a code or a time. */
public final class Figures {
  private Figures() {}

  /**
   * Whether a text, a page or an answer shows the figure.
   *
   * @param text what is shown; commas between thousands are passed over
   * @param figure digits without commas, such as 7300
   */
  public static boolean shows(String text, String figure) {
    return Pattern.compile(
            "(?<![\\w.+/-])(?<!\\d:)" + Pattern.quote(figure) + "(?![\\w:+/-]|\\.\\d)")
        .matcher(text.replaceAll("(?<=\\b\\d{1,3}),(?=\\d{3}\\b)", ""))
        .find();
  }
}
