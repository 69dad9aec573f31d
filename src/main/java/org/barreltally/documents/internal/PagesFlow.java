package org.barreltally.documents.internal;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.documents.FormText;
import org.barreltally.documents.PagesText;

/** Finds for every row of a text its page and height. Lengths in points. */
final class PagesFlow {

  /** A row where it stands: its top from the top of the page's text. */
  record Placed(int page, double down, FormRow row) {}

  /** A cut: between two slots of a page. */
  record Cut(int page, double down) {}

  private final Faces faces;
  private final double width;
  private final double height;
  private final double slot;
  private final double apart;
  private final List<Placed> placed = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();
  private int page;
  private double down;

  /**
   * @param height of the text on a page
   * @param slot height of the parts in which blocks begin; 0 where they flow on
   * @param apart blank between a block and the next, a cut being in the middle of it
   */
  PagesFlow(Faces faces, double width, double height, double slot, double apart) {
    this.faces = faces;
    this.width = width;
    this.height = height;
    this.slot = slot;
    this.apart = apart;
  }

  /**
   * @throws org.barreltally.documents.TextDoesNotFit naming a word wider than its column
   * @throws org.barreltally.documents.CharacterNotCovered naming the character and its field
   */
  void add(PagesText.Block block) {
    List<FormRow> rows = rows(block);
    double needed = rows.stream().mapToDouble(FormRow::height).sum();
    if (slot > 0) {
      toSlot(needed);
    } else if (down > 0 && down + needed > height && needed <= height) {
      turn();
    }
    List<FormRow> head = rows.subList(0, block.head());
    for (int i = 0; i < rows.size(); i++) {
      FormRow row = rows.get(i);
      if (down > 0 && down + row.height() > height) {
        turn();
        if (i >= block.head()) {
          head.forEach(this::place);
        }
      }
      place(row);
    }
    down += apart;
  }

  private List<FormRow> rows(PagesText.Block block) {
    List<FormRow> rows = new ArrayList<>();
    for (FormText.Part part : block.parts()) {
      for (FormText.Row row : part.rows()) {
        boolean begins = row == part.rows().get(0) && !(slot > 0 && rows.isEmpty());
        rows.add(FormRow.set(row, part.columns(), begins, faces, width, 1));
      }
    }
    return rows;
  }

  /** Goes on to the slot in which so much can begin. */
  private void toSlot(double needed) {
    if (down == 0) {
      return;
    }
    double next = Math.ceil(down / slot) * slot;
    if (next + Math.min(needed, height) > height) {
      turn();
    } else {
      cuts.add(new Cut(page, next));
      down = next;
    }
  }

  private void place(FormRow row) {
    placed.add(new Placed(page, down, row));
    down += row.height();
  }

  private void turn() {
    page++;
    down = 0;
  }

  int pages() {
    return page + 1;
  }

  List<Placed> placed() {
    return placed;
  }

  List<Cut> cuts() {
    return cuts;
  }
}
