package org.barreltally.documents;

import org.barreltally.refusal.InvalidField;

/**
 * Which labels of a sheet are printed.
 *
 * @param startAt the first label used on the first sheet, from 1
 * @param count 1 to {@link #MOST}
 */
public record SheetRun(LabelSheet sheet, int startAt, int count) {

  /** The most labels in one document or print. */
  public static final int MOST = 10_000;

  /**
   * @param startAt null for the first label
   * @param count null for the rest of the sheet
   * @throws StartBeyondSheet if the sheet has no such label
   * @throws InvalidField naming count if it is out of its range
   */
  public static SheetRun of(LabelSheet sheet, Integer startAt, Integer count) {
    int start = startAt == null ? 1 : startAt;
    if (start < 1 || start > sheet.labelsPerPage()) {
      throw new StartBeyondSheet(Integer.toString(start), sheet);
    }
    int labels = count == null ? sheet.labelsPerPage() - start + 1 : count;
    if (labels < 1 || labels > MOST) {
      throw new InvalidField(
          "count", "Give how many labels, a whole number from 1 to " + MOST + " at a time.");
    }
    return new SheetRun(sheet, start, labels);
  }

  /** Where the next print can begin on the last sheet; 1 when it is used up. */
  public int next() {
    return (startAt - 1 + count) % sheet.labelsPerPage() + 1;
  }
}
