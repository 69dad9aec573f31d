package org.barreltally.documents;

import java.util.List;
import org.barreltally.documents.internal.AddressLabelPdf;
import org.barreltally.documents.internal.FormPages;
import org.barreltally.documents.internal.FormPdf;
import org.barreltally.documents.internal.GreetingCardPdf;
import org.barreltally.documents.internal.LabelPdf;
import org.barreltally.documents.internal.PagesPdf;
import org.barreltally.documents.internal.PriceCardPdf;
import org.barreltally.documents.internal.PriceSheetPdf;
import org.barreltally.documents.internal.TagPdf;
import org.barreltally.errands.Progress;

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
    return labels(text, run, Progress.UNWATCHED);
  }

  /** As {@link #labels(LabelText, SheetRun)}, watched by somebody. */
  public static byte[] labels(LabelText text, SheetRun run, Progress progress) {
    return LabelPdf.render(text, run.sheet(), run.startAt(), run.count(), progress);
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
   * A price list to hand out: on one page if its type can be large there, else on two, and on more
   * only if it is too long for two columns of the least type.
   *
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] priceSheet(PriceSheetText text, Paper paper) {
    return PriceSheetPdf.render(text, paper);
  }

  /**
   * Price cards on sheets of labels or card, one after the other.
   *
   * @param startAt the first place used on the first sheet, from 1
   * @throws TextDoesNotFit naming what is too long
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] priceCards(List<PriceCardText> cards, LabelSheet sheet, int startAt) {
    return PriceCardPdf.render(cards, sheet, startAt);
  }

  /**
   * Rows in columns on as many pages as they take.
   *
   * @throws TextDoesNotFit naming a word wider than its column
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] pages(FormText text) {
    return FormPages.render(text);
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

  /**
   * Letters and the like, one after the other, each on pages of its own.
   *
   * @param letters at least one, all on the same paper
   * @throws TextDoesNotFit naming a word wider than its column
   * @throws CharacterNotCovered naming the character and its field
   */
  public static byte[] letters(String title, List<FormText> letters) {
    return FormPages.render(title, letters);
  }
}
