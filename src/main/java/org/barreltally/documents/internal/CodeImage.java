package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import java.util.List;
import uk.org.okapibarcode.backend.Code128;
import uk.org.okapibarcode.backend.HumanReadableLocation;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.backend.Symbol;
import uk.org.okapibarcode.graphics.Rectangle;

/**
 * A code as black rectangles, in modules, with the quiet zone around it that its standard asks for:
 * 4 modules on every side of a QR code (ISO/IEC 18004), 10 at both ends of Code 128 (ISO/IEC
 * 15417).
 *
 * @param across modules with the quiet zone
 * @param down modules with the quiet zone; for bars the least that can be stretched
 */
public record CodeImage(
    List<Rectangle> rectangles, double left, double below, double across, double down) {

  private static final int QR_QUIET = 4;
  private static final int BARS_QUIET = 10;

  /** A code that is still read where about a seventh of it is spoilt. */
  public static CodeImage qr(String content) {
    return qr(content, QrCode.EccLevel.M);
  }

  /** A smaller code, read where about a fourteenth is spoilt. */
  static CodeImage smallQr(String content) {
    return qr(content, QrCode.EccLevel.L);
  }

  private static CodeImage qr(String content, QrCode.EccLevel correction) {
    QrCode code = new QrCode();
    code.setPreferredEccLevel(correction);
    return of(code, content, QR_QUIET, QR_QUIET);
  }

  static CodeImage bars(String content) {
    return bars(new Code128(), content);
  }

  private static CodeImage bars(Code128 code, String content) {
    code.setBarHeight(1);
    code.setHumanReadableLocation(HumanReadableLocation.NONE);
    return of(code, content, BARS_QUIET, 0);
  }

  /** Number and lot as GS1-128, their application identifiers 01 and 10 before them. */
  static CodeImage bars(String gtin, String lot) {
    Code128 code = new Code128();
    code.setDataType(Symbol.DataType.GS1);
    return bars(code, "[01]" + gtin + "[10]" + lot);
  }

  private static CodeImage of(Symbol code, String content, int beside, int below) {
    code.setModuleWidth(1);
    code.setContent(content);
    return new CodeImage(
        List.copyOf(code.getRectangles()),
        beside,
        below,
        code.getWidth() + 2 * beside,
        code.getHeight() + 2 * below);
  }

  /**
   * How far its quiet zone may reach over a margin that stays blank, points.
   *
   * @param module its width in points
   */
  double overlap(double module, double margin) {
    return Math.min(left * module, margin);
  }

  /** Draws it with its lower left corner, quiet zone included, at a point; sizes in points. */
  void draw(PdfContentByte canvas, double x, double y, double width, double height) {
    double module = width / across;
    double high = height / down;
    canvas.setGrayFill(0);
    for (Rectangle bar : rectangles) {
      canvas.rectangle(
          (float) (x + (left + bar.x) * module),
          (float) (y + height - (below + bar.y + bar.height) * high),
          (float) (bar.width * module),
          (float) (bar.height * high));
    }
    canvas.fill();
  }
}
