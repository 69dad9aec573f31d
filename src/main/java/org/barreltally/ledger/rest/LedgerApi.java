package org.barreltally.ledger.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Invariants;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.ledger.Pools;
import org.barreltally.ledger.Pools.Pool;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.Asked;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What can be promised, where stock can stand, and whether the book adds up. */
@Path("/api")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Ledger")
public class LedgerApi {

  /** The invariants of the book; each should have no violations. */
  public record Findings(List<Invariants.Finding> items) {}

  /**
   * Pieces of one container and grade.
   *
   * @param onHand at home and out
   * @param held at home, of lots that are held
   * @param reserved promised
   * @param out at shows and shops
   * @param available what can still be promised; below zero it is a to-do
   */
  public record Available(
      String container,
      ColorClass grade,
      long onHand,
      long held,
      long reserved,
      long out,
      long available) {

    static Available of(Pool pool) {
      return new Available(
          pool.container(),
          ColorClass.of(pool.grade()),
          pool.onHand(),
          pool.held(),
          pool.reserved(),
          pool.out(),
          pool.available());
    }
  }

  /** A place of the book. */
  public record NamedPlace(String code, String name, Place.Kind kind) {}

  private final Invariants invariants;
  private final Pools pools;
  private final Places places;
  private final Days days;

  LedgerApi(Invariants invariants, Pools pools, Places places, Days days) {
    this.invariants = invariants;
    this.pools = pools;
    this.places = places;
    this.days = days;
  }

  @GET
  @Path("/ledger/invariants")
  @Operation(summary = "Ask the book whether it adds up; every list of violations should be empty")
  @APIResponse(
      responseCode = "200",
      description = "Every invariant with the rows that break it",
      content =
          @Content(
              schema = @Schema(implementation = Findings.class),
              examples =
                  @ExampleObject(
                      name = "all holds",
                      value =
                          "{\"items\": [{\"name\": \"entries-sum-to-zero\", \"violations\": []}]}")))
  public Findings invariants() {
    return new Findings(invariants.check());
  }

  @GET
  @Path("/availability")
  @Operation(
      summary = "What can be promised, in pieces by container and grade",
      description =
          "On a day, today unless told otherwise. Promises have no day of their own yet, so a later"
              + " day shows what today does.")
  @APIResponse(
      responseCode = "200",
      description = "The pools",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "pints",
                      value =
                          """
                          {"items": [{"container": "PT", "grade": "amber", "onHand": 160,
                           "held": 0, "reserved": 12, "out": 24, "available": 124}]}
                          """)))
  public Page<Available> availability(
      @QueryParam("container") String container,
      @QueryParam("grade") String grade,
      @QueryParam("on") String on,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    LocalDate day = Asked.day(on, "on");
    if (day != null && day.isBefore(days.today())) {
      throw new InvalidField("on", "What can be promised is for today or a later day.");
    }
    String known = grade == null ? null : ColorClass.of(grade).code();
    return page.page(
        pools
            .list(container, known, page.after(LedgerApi::key).orElse(null), page.limit() + 1)
            .stream()
            .map(Available::of)
            .toList(),
        pool -> pool.container() + " " + pool.grade().code());
  }

  @GET
  @Path("/places")
  @Operation(
      summary = "List the places of the book by code",
      description =
          "Own stock stands at home or out; what is outside is where stock came from or went.")
  public Page<NamedPlace> places(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    List<Place> found = places.list(page.after(Function.identity()).orElse(null), page.limit() + 1);
    return page.page(
        found.stream()
            .map(place -> new NamedPlace(place.code(), place.name(), place.kind()))
            .toList(),
        NamedPlace::code);
  }

  private static Pool key(String text) {
    String[] parts = text.split(" ", 2);
    return new Pool(parts[0], parts[1], 0, 0, 0, 0);
  }
}
