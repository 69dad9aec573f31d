package org.barreltally.sugarbush.boiling.pages;

import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.sugarbush.boiling.DrawOff;
import org.barreltally.sugarbush.boiling.Feed;
import org.barreltally.sugarbush.boiling.rest.SugarhouseApi;
import org.barreltally.sugarbush.rest.BushesApi;
import org.barreltally.web.pages.Choice;

/**
 * What the log's forms offer.
 *
 * @param today by the farm's clock, which a form's day begins with
 * @param bushes of the season, by name
 * @param tanks that hold sap or concentrate by the log
 */
@TemplateData
public record LogChoices(
    LocalDate today,
    List<String> bushes,
    List<String> tanks,
    List<Choice> fed,
    List<Choice> instruments) {

  static LogChoices of(BushesApi bushes, SugarhouseApi house) {
    SugarhouseApi.Tanks tanks = house.tanks(null);
    return new LogChoices(
        tanks.until(),
        bushes.list(null).items().stream().map(bush -> bush.name()).toList(),
        tanks.items().stream().map(SugarhouseApi.Tank::tank).toList(),
        Choice.of(Feed.Of.values(), "sugarhouse.fed"),
        Choice.of(DrawOff.Instrument.values(), "sugarhouse.instrument"));
  }
}
