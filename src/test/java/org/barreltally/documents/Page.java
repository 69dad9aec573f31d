package org.barreltally.documents;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A page of a paper as a picture, read by other libraries than those that made it. */
public final class Page {

  /** Dots in an inch of the picture. */
  static final int DPI = 300;

  private static final int DARK = 128;

  private final BufferedImage picture;

  private Page(BufferedImage picture) {
    this.picture = picture;
  }

  /** Red, green and blue of each dot, row by row, without a look into each by itself. */
  private int[] dots() {
    return (int[])
        picture.getRaster().getDataElements(0, 0, picture.getWidth(), picture.getHeight(), null);
  }

  static Page of(byte[] pdf, int number) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new Page(new PDFRenderer(document).renderImageWithDPI(number - 1, DPI, ImageType.RGB));
    }
  }

  public static int pages(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    }
  }

  public static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  double widthInches() {
    return picture.getWidth() / (double) DPI;
  }

  double heightInches() {
    return picture.getHeight() / (double) DPI;
  }

  /** The part of it between these inches from its upper left corner. */
  Page part(double left, double top, double width, double height) {
    int x = (int) Math.round(left * DPI);
    int y = (int) Math.round(top * DPI);
    return new Page(
        picture.getSubimage(
            x,
            y,
            Math.min(picture.getWidth() - x, (int) Math.round(width * DPI)),
            Math.min(picture.getHeight() - y, (int) Math.round(height * DPI))));
  }

  /**
   * Where something is printed: left, top, right and bottom edge in inches from the upper left
   * corner; empty where it is blank.
   */
  double[] ink() {
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    int right = -1;
    int bottom = -1;
    int[] dots = dots();
    int width = picture.getWidth();
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < width; x++) {
        if ((dots[y * width + x] & 0xFF) < DARK) {
          left = Math.min(left, x);
          top = Math.min(top, y);
          right = Math.max(right, x + 1);
          bottom = Math.max(bottom, y + 1);
        }
      }
    }
    double dpi = DPI;
    return right < 0
        ? new double[0]
        : new double[] {left / dpi, top / dpi, right / dpi, bottom / dpi};
  }

  boolean isBlank() {
    return ink().length == 0;
  }

  /** What a code of that kind on it says. */
  String decoded(BarcodeFormat kind) throws NotFoundException {
    return new MultiFormatReader()
        .decode(
            new BinaryBitmap(
                new HybridBinarizer(
                    new RGBLuminanceSource(picture.getWidth(), picture.getHeight(), dots()))),
            Map.of(
                DecodeHintType.POSSIBLE_FORMATS,
                List.of(kind),
                DecodeHintType.TRY_HARDER,
                Boolean.TRUE))
        .getText();
  }
}
