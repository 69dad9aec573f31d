package org.barreltally.documents;

import java.util.List;
import org.barreltally.documents.internal.AddressLabelPdf;
import org.barreltally.documents.internal.FormPdf;
import org.barreltally.documents.internal.GreetingCardPdf;
import org.barreltally.documents.internal.LabelPdf;
import org.barreltally.documents.internal.PagesPdf;
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

  /**
   * Rows on as many pages as they take.
   *
   * @throws TextDoesNotFit naming a word that is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] pages(PagesText text) {
    return PagesPdf.render(text);
  }

  /**
   * Sheets of address labels.
   *
   * @param startAt the first label used on the first sheet, from 1
   * @throws TextDoesNotFit naming what is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] addresses(List<AddressText> labels, LabelSheet sheet, int startAt) {
    return AddressLabelPdf.render(labels, sheet, startAt);
  }

  /**
   * Greeting cards, four on a page.
   *
   * @throws TextDoesNotFit naming what is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] cards(List<CardText> cards, Paper paper) {
    return GreetingCardPdf.render(cards, paper);
  }
}
