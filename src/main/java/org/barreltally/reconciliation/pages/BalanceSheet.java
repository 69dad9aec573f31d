package org.barreltally.reconciliation.pages;

import io.quarkus.qute.TemplateData;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.reconciliation.Line;
import org.barreltally.reconciliation.rest.ReconciliationView;
import org.barreltally.reconciliation.rest.ReconciliationView.Said;

/**
 * A balance as rows of a table: what came in, what went, what nobody can account for, what stands.
 */
@TemplateData
public record BalanceSheet(List<Row> in, List<Row> out, Row unexplained, List<Row> closing) {

  /** A line of the balance. */
  @TemplateData
  public record Row(Line line, Quantity mass, Quantity volume, long pieces) {

    static Row of(Line line, Said said) {
      return new Row(line, said.mass(), said.volumeAt68F(), said.pieces());
    }
  }

  static BalanceSheet of(ReconciliationView view) {
    ReconciliationView.Out out = view.out();
    return new BalanceSheet(
        List.of(
            Row.of(Line.OPENING, view.opening()),
            Row.of(Line.MADE, view.made()),
            Row.of(Line.WATER, view.water()),
            Row.of(Line.BOUGHT, view.bought()),
            Row.of(Line.RETURNED, view.returned())),
        List.of(
            Row.of(Line.SOLD, out.sold()),
            Row.of(Line.GIFTS, out.gifts()),
            Row.of(Line.SHARES, out.shares()),
            Row.of(Line.BULK, out.bulk()),
            Row.of(Line.CONSIGNED_SOLD, out.consignedSold()),
            Row.of(Line.SAMPLES, out.samples()),
            Row.of(Line.BROKEN, out.broken()),
            Row.of(Line.DISCARDED, out.discarded()),
            Row.of(Line.SHRINK, out.shrink()),
            Row.of(Line.CONVERTED, view.converted())),
        new Row(
            Line.UNEXPLAINED,
            view.unexplained().mass(),
            view.unexplained().volumeAt68F(),
            view.unexplained().pieces()),
        List.of(
            Row.of(Line.BARRELS, view.closing().barrels()),
            Row.of(Line.CONTAINERS, view.closing().containers()),
            Row.of(Line.CONSIGNED, view.closing().consigned())));
  }
}
