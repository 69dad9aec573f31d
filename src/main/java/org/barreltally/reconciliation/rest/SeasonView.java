package org.barreltally.reconciliation.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.reconciliation.FlowWords;
import org.barreltally.reconciliation.How;
import org.barreltally.reconciliation.SeasonReconciled;
import org.barreltally.reconciliation.flows.ReconciledFlow;
import org.barreltally.reconciliation.flows.ReconciledNode;
import org.barreltally.reconciliation.flows.Suspect;

/**
 * A season's weighings, readings and counts, and which of them does not fit the others.
 *
 * @param says what it comes to, for people
 * @param suspects the likeliest first
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SeasonView(
    int season,
    String says,
    NetworkView.TestView globalTest,
    BigDecimal criticalStandardized,
    List<SuspectView> suspects,
    List<FlowView> flows,
    List<PlaceView> places) {

  private static final double G_PER_KG = 1000;

  /** Weight as a scale reads in air, and volume at 68 °F of syrup of 66.9 °Bx. */
  public record Said(Quantity weight, Quantity volumeAt68F) {

    static Said of(double grams) {
      return new Said(FlowWords.weight(grams), FlowWords.volume(grams));
    }
  }

  /**
   * @param readings ways to read it that no measurement tells apart
   * @param restAgrees whether all else agrees once it is set aside, with those before it
   */
  public record SuspectView(
      BigDecimal standardized, boolean restAgrees, List<ReadingView> readings) {}

  /**
   * @param flow whose measurement it may be; or
   * @param place of which something was not told
   * @param error of a flow: too high by it; of a place: so much more came in than is told to have
   *     left
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record ReadingView(
      String flow, String place, String says, Said error, Said standardUncertainty) {

    static ReadingView of(Suspect.Reading reading) {
      return new ReadingView(
          reading.flow(),
          reading.node(),
          FlowWords.of(reading),
          Said.of(reading.error()),
          Said.of(reading.u()));
    }
  }

  /**
   * @param how it is known, in words
   * @param checked percent of the measurement's variance that other measurements check
   * @param says what came of it
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record FlowView(
      String name,
      String from,
      String to,
      String measuredBy,
      String how,
      Quantity measured,
      Quantity measuredU,
      Quantity reconciled,
      Quantity reconciledU,
      Said adjustment,
      BigDecimal standardized,
      BigDecimal checked,
      boolean suspect,
      String says) {

    static FlowView of(ReconciledFlow flow, How how, double critical) {
      boolean measured = flow.flow().isMeasured();
      return new FlowView(
          flow.flow().name(),
          flow.flow().from(),
          flow.flow().to(),
          how.code(),
          how.words(),
          kg(flow.flow().measured()),
          measured ? kg(Math.sqrt(flow.flow().variance())) : null,
          kg(flow.reconciled()),
          kg(flow.u()),
          measured ? Said.of(flow.adjustment()) : null,
          decimal(flow.standardized(), 2),
          measured ? decimal(100 * flow.checked(), 1) : null,
          flow.suspect(),
          words(flow, critical));
    }

    private static String words(ReconciledFlow flow, double critical) {
      if (!flow.flow().isMeasured()) {
        return flow.reconciled() == null
            ? "Not measured, and nothing tells it."
            : "Not measured; it follows from the rest.";
      }
      if (flow.standardized() == null) {
        return "No other measurement checks it.";
      }
      if (flow.suspect()) {
        return "Does not fit the others.";
      }
      return Math.abs(flow.standardized()) > critical
          ? "Drawn along by what does not fit; look there first."
          : "Agrees with the others within what measuring can tell.";
    }
  }

  /** What was measured in less what was measured out; left out where not all was. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record PlaceView(
      String name, Said imbalance, Said standardUncertainty, BigDecimal standardized) {

    static PlaceView of(ReconciledNode node) {
      return new PlaceView(
          node.name(),
          node.imbalance() == null ? null : Said.of(node.imbalance()),
          node.u() == null ? null : Said.of(node.u()),
          decimal(node.standardized(), 2));
    }
  }

  static SeasonView of(SeasonReconciled season) {
    if (season.found() == null) {
      return new SeasonView(
          season.season(), FlowWords.of(season), null, null, List.of(), List.of(), List.of());
    }
    double critical =
        season.found().critical() == null ? Double.MAX_VALUE : season.found().critical();
    return new SeasonView(
        season.season(),
        FlowWords.of(season),
        NetworkView.TestView.of(season.found().globalTest()),
        decimal(season.found().critical(), 3),
        season.found().suspects().stream()
            .map(
                each ->
                    new SuspectView(
                        decimal(each.standardized(), 2),
                        each.after().passed(),
                        each.readings().stream().map(ReadingView::of).toList()))
            .toList(),
        season.found().flows().stream()
            .map(
                flow -> FlowView.of(flow, season.network().how().get(flow.flow().name()), critical))
            .toList(),
        season.found().nodes().stream().map(PlaceView::of).toList());
  }

  private static Quantity kg(Double grams) {
    return grams == null ? null : Quantity.rounded(grams / G_PER_KG, Unit.KG, 3);
  }

  private static BigDecimal decimal(Double value, int decimals) {
    return value == null
        ? null
        : BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }
}
