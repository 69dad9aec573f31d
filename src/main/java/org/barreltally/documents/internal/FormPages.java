package org.barreltally.documents.internal;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText;

/**
 * A form on as many pages as it takes, each with title, page and number of pages below. A row is
 * never cut in two, and the first two rows of a part stay together.
 */
public final class FormPages {

  private static final double MARGIN = 45;
  private static final double FOOT = 24;
  private static final double FOOT_SIZE = 8;

  /** A row and where it stands on its page. */
  private record Placed(FormRow row, double top) {}

  private FormPages() {}

  /**
   * @throws org.barreltally.documents.TextDoesNotFit naming a word wider than its column
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(FormText form) {
    return render(form.title(), List.of(form));
  }

  /**
   * Forms one after the other, each on pages of its own; all on the paper of the first.
   *
   * @param forms at least one
   * @throws org.barreltally.documents.TextDoesNotFit naming a word wider than its column
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  public static byte[] render(String title, List<FormText> forms) {
    double width = forms.get(0).paper().width();
    double height = forms.get(0).paper().height();
    return Pdf.of(
        title,
        width,
        height,
        (document, writer) -> {
          Faces faces = Faces.read();
          for (int n = 0; n < forms.size(); n++) {
            if (n > 0) {
              document.newPage();
            }
            draw(forms.get(n), faces, document, writer);
          }
        });
  }

  private static void draw(FormText form, Faces faces, Document document, PdfWriter writer) {
    double width = form.paper().width() - 2 * MARGIN;
    List<List<Placed>> pages = pages(form, faces, width);
    for (int n = 0; n < pages.size(); n++) {
      if (n > 0) {
        document.newPage();
      }
      Pen pen = new Pen(writer.getDirectContent(), faces);
      pages.get(n).forEach(placed -> placed.row().draw(pen, MARGIN, width, placed.top()));
      String foot = "%s · page %d of %d".formatted(form.title(), n + 1, pages.size());
      pen.line(Faces.tidy(foot), false, FOOT_SIZE, MARGIN, FOOT);
    }
  }

  private static List<List<Placed>> pages(FormText form, Faces faces, double width) {
    double first = form.paper().height() - MARGIN;
    List<List<Placed>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    double top = first;
    for (FormText.Part part : form.parts()) {
      List<FormRow> rows = set(part, faces, width, top < first);
      for (int n = 0; n < rows.size(); n++) {
        boolean heads = n == 0 && rows.size() > 1;
        double needed = rows.get(n).height() + (heads ? rows.get(n + 1).height() : 0);
        if (top - needed < MARGIN && top < first) {
          pages.add(new ArrayList<>());
          top = first;
        }
        pages.get(pages.size() - 1).add(new Placed(rows.get(n), top));
        top -= rows.get(n).height();
      }
    }
    return pages;
  }

  private static List<FormRow> set(
      FormText.Part part, Faces faces, double width, boolean spaceAbove) {
    List<FormRow> rows = new ArrayList<>();
    for (FormText.Row row : part.rows()) {
      rows.add(FormRow.set(row, part.columns(), rows.isEmpty() && spaceAbove, faces, width, 1));
    }
    return rows;
  }
}
