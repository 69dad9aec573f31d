package org.barreltally.sugarbush.boiling.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.Quantity;
import org.barreltally.sugarbush.boiling.Boil;
import org.barreltally.sugarbush.boiling.BoilNote;
import org.barreltally.sugarbush.boiling.DrawOff;
import org.barreltally.sugarbush.boiling.DrawOffTemperature;
import org.barreltally.sugarbush.boiling.DrawOffTemperatures;
import org.barreltally.sugarbush.boiling.Feed;
import org.barreltally.sugarbush.boiling.Reversed;

/**
 * A boil with its parts and what it could be expected to give.
 *
 * @param drawOffTemperature of the day; left out if neither pressure nor water was read
 * @param shortTanks tanks it took from that hold less than nothing by the log: flagged, not refused
 * @param reversed left out while it counts; of a part, too
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record BoilView(
    UUID id,
    LocalDate on,
    int season,
    Instant startedAt,
    Instant endedAt,
    String fuel,
    Pressure pressure,
    Quantity waterBoils,
    BigDecimal targetBrix,
    DrawOffTemperatureView drawOffTemperature,
    List<Fed> feeds,
    List<Drawn> drawOffs,
    List<Noted> notes,
    ExpectedView expected,
    List<Amounts.Short> shortTanks,
    String note,
    Reversed reversed,
    List<String> cautions) {

  static final String PRESS =
      "Never open a filter press under pressure: stop the pump, let the gauge fall to nothing, and mind hot"
          + " syrup in the lines.";
  static final String PAN =
      "Syrup at draw-off is near 219 °F and clings: gloves, apron, closed shoes, no children at the pan.";

  /** What went in. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Fed(
      UUID id,
      Feed.Of of,
      String tank,
      String bush,
      Quantity volume,
      Quantity temperature,
      BigDecimal brix,
      Amounts.View amount,
      Reversed reversed) {}

  /** What came off. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Drawn(
      UUID id,
      Instant at,
      Quantity volume,
      Quantity temperature,
      Quantity weight,
      DrawOff.Reading density,
      String barrel,
      boolean hotIntoJars,
      String note,
      Amounts.View amount,
      Reversed reversed) {}

  /** What was said later. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Noted(
      UUID id,
      Instant endedAt,
      String fuel,
      String niter,
      String filterPress,
      String note,
      Reversed reversed) {}

  static BoilView of(Boil boil, DrawOffTemperatures temperatures) {
    boolean told = boil.said().pressure() != null || boil.said().waterBoils() != null;
    DrawOffTemperature day = told ? temperatures.of(boil.said()) : null;
    return new BoilView(
        boil.id(),
        boil.on(),
        boil.season(),
        boil.said().startedAt(),
        boil.endedAt(),
        boil.fuel(),
        boil.said().pressure(),
        boil.said().waterBoils(),
        boil.said().targetBrix(),
        day == null ? null : DrawOffTemperatureView.of(day),
        boil.feeds().stream().map(BoilView::fed).toList(),
        boil.drawOffs().stream().map(BoilView::drawn).toList(),
        boil.notes().stream().map(BoilView::noted).toList(),
        ExpectedView.of(boil.expected()),
        boil.shortTanks().stream().map(Amounts.Short::of).toList(),
        boil.said().note(),
        boil.reversed(),
        List.of(PAN, PRESS));
  }

  private static Fed fed(Boil.Fed fed) {
    Feed said = fed.said();
    return new Fed(
        fed.id(),
        said.of(),
        fed.amount().tank(),
        fed.bush(),
        said.volume(),
        said.temperature(),
        said.brix(),
        Amounts.View.of(fed.amount()),
        fed.reversed());
  }

  private static Drawn drawn(Boil.Drawn drawn) {
    DrawOff said = drawn.said();
    return new Drawn(
        drawn.id(),
        said.at(),
        said.volume(),
        said.temperature(),
        said.weight(),
        said.density(),
        said.barrel(),
        said.hotIntoJars(),
        said.note(),
        Amounts.View.of(drawn.amount()),
        drawn.reversed());
  }

  private static Noted noted(Boil.Noted noted) {
    BoilNote said = noted.said();
    return new Noted(
        noted.id(),
        said.endedAt(),
        said.fuel(),
        said.niter(),
        said.filterPress(),
        said.note(),
        noted.reversed());
  }
}
