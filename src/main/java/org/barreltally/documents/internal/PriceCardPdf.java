package org.barreltally.documents.internal;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import java.util.List;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.PriceCardText;

/** Price cards on sheets, one after the other, each with a hair line where it is cut. */
public final class PriceCardPdf {

  private static final float HAIR = 0.25f;

  private PriceCardPdf() {}

  /**
   * @param startAt the first place used on the first sheet, from 1 to the places of a sheet
   * @throws org.barreltally.documents.TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(List<PriceCardText> cards, LabelSheet sheet, int startAt) {
    return Pdf.of(
        "Price cards",
        sheet.paper().width(),
        sheet.paper().height(),
        (document, writer) -> {
          Faces faces = Faces.read();
          for (int i = 0; i < cards.size(); i++) {
            int place = (startAt - 1 + i) % sheet.labelsPerPage();
            if (place == 0 && i > 0) {
              document.newPage();
            }
            PdfContentByte canvas = writer.getDirectContent();
            PdfTemplate card = canvas.createTemplate((float) sheet.width(), (float) sheet.height());
            new CardFace(faces, cards.get(i), sheet.width(), sheet.height()).draw(card);
            edge(card, sheet);
            LabelSheet.Corner corner = sheet.corner(place);
            canvas.addTemplate(card, (float) corner.x(), (float) corner.y());
          }
        });
  }

  private static void edge(PdfTemplate card, LabelSheet sheet) {
    card.setLineWidth(HAIR);
    card.setGrayStroke(0.6f);
    card.rectangle(0, 0, (float) sheet.width(), (float) sheet.height());
    card.stroke();
  }
}
