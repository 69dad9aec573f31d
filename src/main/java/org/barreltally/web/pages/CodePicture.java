package org.barreltally.web.pages;

/** Draws a QR code; implemented where codes are drawn. */
public interface CodePicture {

  /**
   * An SVG picture of a QR code (ISO/IEC 18004), to stand within a page.
   *
   * @param words what it leads to, for those who cannot see it
   */
  String svg(String content, String words);
}
