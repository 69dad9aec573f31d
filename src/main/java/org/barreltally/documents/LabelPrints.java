package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import org.barreltally.documents.internal.PrintRows;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.refusal.InvalidField;

/**
 * The log of label prints: what was printed, how many, and why again. It keeps what stood on the
 * labels, so that they can be printed again as they were.
 */
@ApplicationScoped
public class LabelPrints {

  private static final int REASON_MAX = 500;

  private final LotLabels labels;
  private final LabelSheets sheets;
  private final Lots lots;
  private final PrintRows rows;
  private final Days days;
  private final Ids ids;

  LabelPrints(LotLabels labels, LabelSheets sheets, Lots lots, PrintRows rows, Days days, Ids ids) {
    this.labels = labels;
    this.sheets = sheets;
    this.lots = lots;
    this.rows = rows;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Records a print; a reprint says what its original said.
   *
   * @throws UnknownLabelPrint if the original is none of this lot and container
   * @throws InvalidField naming reason if a reprint has none
   * @throws LotHeld and the other refusals of {@link LotLabels#ofJar}
   */
  @Transactional
  public LabelPrint record(String lot, PrintLabels said) {
    checkReason(said);
    if (said.count() == null) {
      throw new InvalidField("count", "Say how many labels are printed.");
    }
    LabelSheet sheet = labels.sheet(said.sheet());
    SheetRun run = SheetRun.of(sheet, said.startAt(), said.count());
    LabelText text = labels.ofJar(lot, sheet, said.label());
    if (said.reprintOf() != null) {
      text = original(lot, said).said();
    }
    Papers.labels(text, new SheetRun(sheet, 1, 1)); // refuses what cannot be printed
    LabelPrint print =
        new LabelPrint(
            ids.next(),
            lot,
            said.container(),
            sheet.code(),
            run.startAt(),
            run.count(),
            said.reprintOf(),
            said.reason() == null ? null : said.reason().strip(),
            text,
            days.now());
    rows.add(print);
    return print;
  }

  /**
   * @throws UnknownLabelPrint if it is none of this lot
   */
  @Transactional
  public LabelPrint at(String lot, UUID id) {
    lots.at(lot);
    return rows.find(lot, id).orElseThrow(() -> new UnknownLabelPrint(lot, id));
  }

  /** The prints of a lot in the order they were recorded, after one (or null), at most so many. */
  @Transactional
  public List<LabelPrint> list(String lot, UUID after, int limit) {
    lots.at(lot);
    return rows.list(lot, after, limit);
  }

  /**
   * A print drawn again, as it was, on the sheet it was printed on.
   *
   * @throws LotHeld if the lot is held meanwhile
   */
  public byte[] pdf(String lot, UUID id) {
    LabelPrint print = at(lot, id);
    if (lots.at(lot).held()) {
      throw new LotHeld(lot, "lot");
    }
    return Papers.labels(
        print.said(),
        new SheetRun(sheets.named(print.sheet(), "sheet"), print.startAt(), print.count()));
  }

  private LabelPrint original(String lot, PrintLabels said) {
    return rows.find(lot, said.reprintOf())
        .filter(print -> print.container().equals(said.container()))
        .orElseThrow(() -> new UnknownLabelPrint(lot, said.reprintOf(), "reprintOf"));
  }

  private static void checkReason(PrintLabels said) {
    boolean none = said.reason() == null || said.reason().isBlank();
    if (said.reprintOf() != null && none) {
      throw new InvalidField("reason", "Say why these labels are printed again.");
    }
    if (!none && said.reason().length() > REASON_MAX) {
      throw new InvalidField("reason", "Say why in at most " + REASON_MAX + " characters.");
    }
  }
}
