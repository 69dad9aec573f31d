package org.barreltally.sugarbush.boiling.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.measure.Uncertain;
import org.barreltally.sugarbush.boiling.ProductionSeason;

/**
 * A season of the sugarhouse: sap, concentrate, boils, syrup, and the yield per tap.
 *
 * @param yieldPerTap gallons of syrup at 68 °F for each tap; left out where no tap was counted
 * @param published yields to hold it beside
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record SeasonView(
    int season,
    List<OfBush> bushes,
    Amounts.Volume sap,
    Amounts.Mass sapSugar,
    Membranes concentrate,
    int boils,
    Amounts.Volume fed,
    Amounts.Mass fedSugar,
    Amounts.Mass expected,
    Amounts.Mass drawn,
    Amounts.Volume drawnVolume,
    Amounts.Difference difference,
    int taps,
    BigDecimal yieldPerTap,
    BigDecimal yieldUncertainty,
    List<Published> published,
    List<String> notes) {

  private static final String LOGGED =
      "Only what was entered in the log counts: a boil left out lowers the yield.";
  private static final String PARTED =
      "Syrup is parted among bushes by the sugar gathered from each; a tank mixes them, so nothing else can be"
          + " known.";
  private static final String AGREED =
      "Some taps were only agreed, not counted in the trees; the yield per tap is as good as that number.";
  private static final String PUBLISHED =
      "A published yield is a mean over many; weather, vacuum and the trees make more difference than the maker.";

  /** A bush's part. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record OfBush(
      String bush,
      Integer taps,
      Amounts.Volume sap,
      Amounts.Mass sugar,
      BigDecimal sharePercent,
      Amounts.Volume syrup,
      BigDecimal yieldPerTap,
      BigDecimal yieldUncertainty) {}

  /** What went through membranes. */
  public record Membranes(
      Amounts.Volume taken, Amounts.Volume made, Amounts.Mass sugarLost, boolean significant) {}

  /** A published yield. */
  public record Published(String where, int season, BigDecimal gallonsPerTap, String source) {}

  static SeasonView of(ProductionSeason season) {
    boolean tapped = season.taps() > 0 && season.drawnML().value() > 0;
    return new SeasonView(
        season.season(),
        season.bushes().stream().map(bush -> bush(bush, season.drawnML())).toList(),
        Amounts.Volume.of(season.sap()),
        Amounts.Mass.of(season.sapSugar()),
        new Membranes(
            Amounts.Volume.of(season.concentrate().taken()),
            Amounts.Volume.of(season.concentrate().made()),
            Amounts.Mass.of(season.concentrate().lostSugar()),
            season.concentrate().lostSugar().differsFrom(Uncertain.exact(0))),
        season.boils(),
        Amounts.Volume.of(season.fed()),
        Amounts.Mass.of(season.fedSugar()),
        Amounts.Mass.of(season.expected()),
        Amounts.Mass.of(season.drawn()),
        Amounts.Volume.of(season.drawnML()),
        difference(season),
        season.taps(),
        tapped ? Amounts.perTap(season.drawnML().value(), season.taps()) : null,
        tapped ? Amounts.perTap(season.drawnML().u(), season.taps()) : null,
        publishedYields(),
        season.bushes().stream().anyMatch(ProductionSeason.OfBush::agreed)
            ? List.of(LOGGED, PARTED, PUBLISHED, AGREED)
            : List.of(LOGGED, PARTED, PUBLISHED));
  }

  private static Amounts.Difference difference(ProductionSeason season) {
    if (season.drawn().value() == 0 || season.expected().value() == 0) {
      return null;
    }
    Uncertain difference = season.difference();
    return new Amounts.Difference(
        Amounts.kilograms(difference.value()),
        null,
        Amounts.number(100 * difference.value() / season.expected().value(), 2),
        Amounts.kilograms(difference.u()),
        difference.differsFrom(Uncertain.exact(0)));
  }

  private static OfBush bush(ProductionSeason.OfBush bush, Uncertain drawn) {
    Uncertain syrup = drawn.times(bush.share());
    boolean tapped = bush.taps() != null && bush.taps() > 0 && syrup.value() > 0;
    return new OfBush(
        bush.bush(),
        bush.taps(),
        Amounts.Volume.of(bush.sap()),
        Amounts.Mass.of(bush.sugar()),
        Amounts.number(100 * bush.share().value(), 2),
        Amounts.Volume.of(syrup),
        tapped ? Amounts.perTap(syrup.value(), bush.taps()) : null,
        tapped ? Amounts.perTap(syrup.u(), bush.taps()) : null);
  }

  private static List<Published> publishedYields() {
    return ReferenceTable.rows("yield_per_tap.csv").stream()
        .map(
            row ->
                new Published(
                    row.get("where"),
                    Integer.parseInt(row.get("season")),
                    new BigDecimal(row.get("gallons_per_tap")),
                    "University of Vermont Extension, from USDA NASS"))
        .toList();
  }
}
