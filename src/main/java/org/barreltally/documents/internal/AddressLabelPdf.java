package org.barreltally.documents.internal;

import java.util.List;
import org.barreltally.documents.AddressText;
import org.barreltally.documents.LabelSheet;

/** Sheets of address labels, one for each parcel. */
public final class AddressLabelPdf {

  private static final double MARGIN = 8;
  private static final double TYPE = 12;
  private static final double LEAST = 6.5;

  private AddressLabelPdf() {}

  /**
   * @param startAt the first label used on the first sheet, from 1
   * @throws org.barreltally.documents.TextDoesNotFit naming what is too long
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(List<AddressText> labels, LabelSheet sheet, int startAt) {
    return Pdf.of(
        "Address labels",
        sheet.paper().width(),
        sheet.paper().height(),
        (document, writer) -> {
          Pen pen = new Pen(writer.getDirectContent(), Faces.read());
          for (int i = 0; i < labels.size(); i++) {
            int place = (startAt - 1 + i) % sheet.labelsPerPage();
            if (place == 0 && i > 0) {
              document.newPage();
            }
            draw(pen, labels.get(i), sheet, sheet.corner(place));
          }
        });
  }

  private static void draw(Pen pen, AddressText label, LabelSheet sheet, LabelSheet.Corner corner) {
    List<Wording> texts =
        label.lines().stream()
            .map(
                line -> {
                  pen.faces().regular().require(Faces.tidy(line), label.field());
                  return new Wording(label.field(), line, false, TYPE, LEAST, LEAST);
                })
            .toList();
    double room = sheet.height() - 2 * MARGIN;
    List<TextBlock.Line> lines =
        new TextBlock(pen.faces(), sheet.width() - 2 * MARGIN, room).fit(texts);
    double blank = (room - TextBlock.height(lines)) / 2;
    pen.block(lines, corner.x() + MARGIN, corner.y() + sheet.height() - MARGIN - blank);
  }
}
