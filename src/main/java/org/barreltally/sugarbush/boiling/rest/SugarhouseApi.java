package org.barreltally.sugarbush.boiling.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.barreltally.ledger.Days;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.PressureUnit;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sugarbush.boiling.DrawOffTemperatures;
import org.barreltally.sugarbush.boiling.Production;
import org.barreltally.sugarbush.boiling.SapLog;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What the sugarhouse's log comes to. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Sugarhouse")
public class SugarhouseApi {

  private final DrawOffTemperatures temperatures;
  private final Production production;
  private final SapLog sap;
  private final Days days;

  SugarhouseApi(DrawOffTemperatures temperatures, Production production, SapLog sap, Days days) {
    this.temperatures = temperatures;
    this.production = production;
    this.sap = sap;
    this.days = days;
  }

  /** Tanks of a season. */
  public record Tanks(int season, LocalDate until, List<Tank> items) {}

  /**
   * What stands in a tank by the log.
   *
   * @param standing below zero where more was taken than went in
   */
  public record Tank(String tank, Amounts.Volume standing, boolean belowNothing) {}

  @GET
  @Path("/draw-off-temperature")
  @Operation(
      summary = "At what temperature to draw off today",
      description =
          "By the pressure at the sugarhouse (not corrected to sea level), or by the temperature at which water"
              + " boiled there today; water counts if both are given. Where water boils is reckoned by"
              + " IAPWS-IF97; how far above it syrup boils is a setting (7.1 °F for 66.0 °Bx, common"
              + " practice). Density decides, not temperature. Hot syrup burns.")
  @APIResponse(
      responseCode = "200",
      description = "The temperature",
      content = @Content(schema = @Schema(implementation = DrawOffTemperatureView.class)))
  public DrawOffTemperatureView drawOffTemperature(
      @Parameter(description = "At the sugarhouse", example = "986") @QueryParam("pressure")
          String pressure,
      @Parameter(description = "hPa, kPa or inHg", example = "hPa") @QueryParam("unit") String unit,
      @Parameter(description = "At what temperature water boils there") @QueryParam("water")
          String water,
      @Parameter(description = "degF or degC; degF if left out") @QueryParam("waterUnit")
          String waterUnit,
      @Parameter(description = "Of the syrup wanted; the least allowed if left out")
          @QueryParam("brix")
          String brix) {
    BigDecimal air = Asked.decimal(pressure, "pressure");
    BigDecimal boils = Asked.decimal(water, "water");
    return DrawOffTemperatureView.of(
        temperatures.of(
            air == null ? null : new Pressure(air, PressureUnit.of(unit)),
            boils == null ? null : Quantity.of(boils, temperature(waterUnit)),
            Asked.decimal(brix, "brix")));
  }

  private static Unit temperature(String code) {
    if (code == null || code.equals(Unit.DEGF.code())) {
      return Unit.DEGF;
    }
    if (code.equals(Unit.DEGC.code())) {
      return Unit.DEGC;
    }
    throw new InvalidField("waterUnit", "Give degF or degC.");
  }

  @GET
  @Path("/sugarbush-season")
  @Operation(
      summary = "A season of the sugarhouse, and its yield per tap",
      description =
          "Sap and sugar by bush, concentrate, syrup expected and drawn, each with its standard uncertainty;"
              + " gallons at 68 °F per tap beside published yields. Without a season, this year's.")
  @APIResponse(
      responseCode = "200",
      description = "The season",
      content = @Content(schema = @Schema(implementation = SeasonView.class)))
  public SeasonView season(@QueryParam("season") String season) {
    return SeasonView.of(production.of(orThis(season)));
  }

  @GET
  @Path("/tanks")
  @Operation(
      summary = "What stands in tanks by the log",
      description =
          "Sap and concentrate that went in less what was taken, at 68 °F, up to today. Below nothing where"
              + " more was taken than entered: something was not entered, or a gauge is off.")
  @APIResponse(
      responseCode = "200",
      description = "The tanks",
      content = @Content(schema = @Schema(implementation = Tanks.class)))
  public Tanks tanks(@QueryParam("season") String season) {
    int year = orThis(season);
    LocalDate today = days.today();
    return new Tanks(
        year,
        today,
        sap.tanks(year, today).entrySet().stream()
            .map(
                tank ->
                    new Tank(
                        tank.getKey(),
                        Amounts.Volume.of(tank.getValue()),
                        tank.getValue().value() < 0))
            .toList());
  }

  private int orThis(String season) {
    Integer said = Asked.year(season, "season");
    return said == null ? days.today().getYear() : said;
  }
}
