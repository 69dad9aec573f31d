package org.barreltally.documents;

import org.barreltally.documents.internal.FormPdf;
import org.barreltally.documents.internal.LabelPdf;
import org.barreltally.documents.internal.TagPdf;

/** Draws papers as PDF. */
public final class Papers {

  private Papers() {}

  /**
   * Sheets of equal labels.
   *
   * @throws TextDoesNotFit naming what is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] labels(LabelText text, SheetRun run) {
    return LabelPdf.render(text, run.sheet(), run.startAt(), run.count());
  }

  /**
   * A tag to tie on, 6 by 4 inches.
   *
   * @throws TextDoesNotFit naming what is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] tag(TagText text) {
    return TagPdf.render(text);
  }

  /**
   * One page of rows in columns.
   *
   * @throws TextDoesNotFit naming what is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] form(FormText text) {
    return FormPdf.render(text);
  }
}
