package org.barreltally.netcontents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.canning.CanningRuns;
import org.barreltally.canning.PackSheet;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.lots.Lots;
import org.barreltally.measure.InstrumentKind;
import org.barreltally.measure.Syrup;
import org.barreltally.measure.Uncertain;
import org.barreltally.netcontents.internal.CheckBook;
import org.barreltally.refusal.Refusal;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.NetContentsRegime;

/**
 * Checks the net contents of a packed lot from weighed jars, and keeps every check with the lot.
 */
@ApplicationScoped
public class Checking {

  static final String OFFICE_DECIDES =
      "This check helps your records. The weights-and-measures office decides.";

  private final CanningRuns runs;
  private final Lots lots;
  private final Containers containers;
  private final AllowedVariations variations;
  private final FarmSettings settings;
  private final CheckBook book;
  private final Days days;
  private final Ids ids;

  Checking(
      CanningRuns runs,
      Lots lots,
      Containers containers,
      AllowedVariations variations,
      FarmSettings settings,
      CheckBook book,
      Days days,
      Ids ids) {
    this.runs = runs;
    this.lots = lots;
    this.containers = containers;
    this.variations = variations;
    this.settings = settings;
    this.book = book;
    this.days = days;
    this.ids = ids;
  }

  /**
   * Works a check out and keeps it, passed or failed.
   *
   * @throws org.barreltally.canning.UnknownRun if no run made that lot
   * @throws ContainerNotInRun if the run did not fill that size
   * @throws WrongSampleSize if the regime wants another sample
   * @throws Refusal of what was said; then nothing is kept
   */
  @Transactional
  public NetContentsCheck check(String lot, NetContentsOrder order) {
    PackSheet sheet = runs.at(lot);
    WeighedRules.said(order);
    Container container = containers.named(order.container(), "container");
    PackSheet.Filled filled = filled(sheet, container.code());
    Contents contents = new Contents(container, new Syrup(lots.at(lot).brix().value()));
    NetContentsRegime regime =
        order.regime() == null ? settings.now().netContentsRegime() : order.regime();
    Findings findings = findings(regime, order, contents);
    List<String> cautions = new ArrayList<>();
    cautions.add(OFFICE_DECIDES);
    cautions.addAll(findings.cautions());
    if (order.lotSize() > filled.count() + filled.broken()) {
      cautions.add(
          "The run filled %d of this size; the lot is said to be %d. Check the number."
              .formatted(filled.count() + filled.broken(), order.lotSize()));
    }
    Uncertain scale =
        Uncertain.within(0, settings.instruments().halfWidth(InstrumentKind.BENCH_SCALE));
    NetContentsCheck check =
        new CheckWriter(contents, new Sample(order.netWeights()), findings, scale)
            .write(ids.next(), lot, order.lotSize(), regime, cautions, days.now());
    book.keep(check);
    return check;
  }

  /** One manner and its tables alone; the number of weights is judged before the weights are. */
  private Findings findings(NetContentsRegime regime, NetContentsOrder order, Contents contents) {
    int size = order.netWeights().size();
    double nominal = contents.nominalGrams();
    if (regime == NetContentsRegime.EU) {
      EuPlan plan = EuPlan.of(order.lotSize(), size);
      WeighedRules.weights(order.netWeights(), nominal);
      Sample sample = new Sample(order.netWeights());
      return new Findings(
          AverageTest.of(plan.factor(), sample, nominal),
          SingleJars.european(plan, sample, contents),
          plan.caution(order.lotSize()).stream().toList());
    }
    UsPlan plan = UsPlan.of(order.lotSize(), size);
    WeighedRules.weights(order.netWeights(), nominal);
    Sample sample = new Sample(order.netWeights());
    return new Findings(
        AverageTest.of(plan.factor(), sample, nominal),
        SingleJars.american(plan, sample, contents, variations.holdingFor(contents.container())),
        List.of());
  }

  private static PackSheet.Filled filled(PackSheet sheet, String container) {
    return sheet.fills().stream()
        .filter(fill -> fill.container().equals(container))
        .findFirst()
        .orElseThrow(
            () ->
                new ContainerNotInRun(
                    sheet.lot(),
                    container,
                    sheet.fills().stream().map(PackSheet.Filled::container).toList()));
  }

  /**
   * The checks of a lot, oldest first, after an id, at most so many.
   *
   * @throws org.barreltally.canning.UnknownRun if no run made that lot
   */
  @Transactional
  public List<NetContentsCheck> list(String lot, UUID after, int limit) {
    runs.at(lot);
    return book.list(lot, after, limit);
  }

  /**
   * One check of a lot.
   *
   * @throws UnknownNetContentsCheck if the lot has none of that id
   */
  @Transactional
  public NetContentsCheck at(String lot, UUID id) {
    return book.find(lot, id).orElseThrow(() -> new UnknownNetContentsCheck(lot, id));
  }
}
