package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfTemplate;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.LabelText;
import org.barreltally.errands.Progress;

/**
 * Sheets of equal labels. The label is drawn once for the whole document, fonts and codes with it,
 * and each place on a sheet only refers to it.
 */
public final class LabelPdf {

  private LabelPdf() {}

  /**
   * @param startAt the first label used on the first sheet, from 1 to the labels of a sheet
   * @param count labels, at least 1
   * @param progress is told of the labels, sheet by sheet
   * @throws org.barreltally.documents.TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(
      LabelText text, LabelSheet sheet, int startAt, int count, Progress progress) {
    progress.of(count);
    return Pdf.of(
        "Labels " + text.lot(),
        sheet.paper().width(),
        sheet.paper().height(),
        (document, writer) -> {
          PdfTemplate label =
              writer
                  .getDirectContent()
                  .createTemplate((float) sheet.width(), (float) sheet.height());
          new LabelFace(Faces.read(), text, sheet.width(), sheet.height()).draw(label);
          for (int i = 0; i < count; i++) {
            int place = (startAt - 1 + i) % sheet.labelsPerPage();
            if (place == 0 && i > 0) {
              document.newPage();
              progress.done(sheet.labelsPerPage());
            }
            LabelSheet.Corner corner = sheet.corner(place);
            writer.getDirectContent().addTemplate(label, (float) corner.x(), (float) corner.y());
          }
        });
  }
}
