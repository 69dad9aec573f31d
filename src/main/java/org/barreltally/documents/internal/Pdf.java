package org.barreltally.documents.internal;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.util.function.BiConsumer;

/** One PDF document in memory, with no margins and no scaling when it is printed. */
final class Pdf {

  private Pdf() {}

  /**
   * @param width of its pages, points
   * @param height of its pages, points
   * @param draw fills the pages
   */
  static byte[] of(
      String title, double width, double height, BiConsumer<Document, PdfWriter> draw) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document = new Document(new Rectangle((float) width, (float) height), 0, 0, 0, 0);
    try {
      PdfWriter writer = PdfWriter.getInstance(document, out);
      writer.addViewerPreference(PdfName.PRINTSCALING, PdfName.NONE);
      document.addTitle(title);
      document.open();
      draw.accept(document, writer);
    } catch (DocumentException e) {
      throw new IllegalStateException("a paper cannot be written", e);
    }
    document.close();
    return out.toByteArray();
  }
}
