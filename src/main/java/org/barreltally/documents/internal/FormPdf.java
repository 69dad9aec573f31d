package org.barreltally.documents.internal;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText;
import org.barreltally.documents.TextDoesNotFit;

/** A form on one page. All of it shrinks a little if it is too much; then it is refused. */
public final class FormPdf {

  private static final double MARGIN = 54;
  private static final double STEP = 0.95;
  private static final double SMALLEST = 0.6;

  private FormPdf() {}

  /**
   * @throws TextDoesNotFit naming the longest text
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(FormText form) {
    double width = form.paper().width();
    double height = form.paper().height();
    return Pdf.of(
        form.title(),
        width,
        height,
        (document, writer) -> {
          Faces faces = Faces.read();
          List<FormRow> rows = fit(form, faces, width - 2 * MARGIN, height - 2 * MARGIN);
          Pen pen = new Pen(writer.getDirectContent(), faces);
          double top = height - MARGIN;
          for (FormRow row : rows) {
            row.draw(pen, MARGIN, width - 2 * MARGIN, top);
            top -= row.height();
          }
        });
  }

  private static List<FormRow> fit(FormText form, Faces faces, double width, double height) {
    for (double scale = 1; scale > SMALLEST; scale *= STEP) {
      List<FormRow> rows = set(form, faces, width, scale);
      if (rows.stream().mapToDouble(FormRow::height).sum() <= height) {
        return rows;
      }
    }
    throw new TextDoesNotFit(longest(form), "All the lines together are longer than the page.");
  }

  private static List<FormRow> set(FormText form, Faces faces, double width, double scale) {
    List<FormRow> rows = new ArrayList<>();
    for (FormText.Part part : form.parts()) {
      boolean first = true;
      for (FormText.Row row : part.rows()) {
        rows.add(FormRow.set(row, part.columns(), first && !rows.isEmpty(), faces, width, scale));
        first = false;
      }
    }
    return rows;
  }

  private static String longest(FormText form) {
    FormText.Cell longest = form.parts().get(0).rows().get(0).cells().get(0);
    for (FormText.Part part : form.parts()) {
      for (FormText.Row row : part.rows()) {
        for (FormText.Cell cell : row.cells()) {
          longest = cell.text().length() > longest.text().length() ? cell : longest;
        }
      }
    }
    return longest.field();
  }
}
