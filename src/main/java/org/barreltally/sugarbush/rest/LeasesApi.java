package org.barreltally.sugarbush.rest;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sugarbush.AgreeLease;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.ContainerCharge;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.LeaseTerms;
import org.barreltally.sugarbush.Leases;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.sugarbush.TapKind;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.MaybeOnce;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.barreltally.web.ReadAnew;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Leases of trees that are paid for in syrup. */
@Path("/api/leases")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Leases")
public class LeasesApi {

  private static final String BODY = "Send the record as JSON.";

  private final Leases leases;
  private final MaybeOnce maybeOnce;

  LeasesApi(Leases leases, MaybeOnce maybeOnce) {
    this.leases = leases;
    this.maybeOnce = maybeOnce;
  }

  /** What is said of a lease. */
  public record NewLease(
      String landowner,
      String bush,
      Integer season,
      Basis basis,
      TapKind governs,
      Money ratePerTap,
      Money price,
      UUID priceList,
      @JsonSetter(contentNulls = Nulls.FAIL) List<ContainerCharge> containerCharges,
      @JsonSetter(contentNulls = Nulls.FAIL) List<TapCount> taps) {

    AgreeLease said() {
      return new AgreeLease(
          landowner,
          bush,
          season,
          new LeaseTerms(basis, governs, ratePerTap, price, priceList, containerCharges),
          taps);
    }
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Agree a lease for a season",
      description =
          "basis says by what jars count: volume, list-value or volume-plus-container. governs says which"
              + " count of taps is paid for, set or agreed; the newest of that kind counts for the whole"
              + " season. What was left of closed leases of the same trees goes on to it.")
  @APIResponse(
      responseCode = "201",
      description = "The lease",
      content =
          @Content(
              schema = @Schema(implementation = LeaseView.class),
              examples = @ExampleObject(name = "example", value = LeaseExamples.LEASE)))
  public Response agree(
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "example", value = LeaseExamples.AGREE)))
          NewLease said) {
    return named(maybeOnce.answer(key, said, () -> kept(leases.agree(said.said()))));
  }

  @GET
  @Operation(summary = "Leases by season, the newest first")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one lease",
                      value = "{\"items\": [" + LeaseExamples.LEASE + "]}")))
  public Page<LeaseView> list(
      @QueryParam("season") String season,
      @QueryParam("landowner") String landowner,
      @QueryParam("open") String open,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        leases
            .list(
                new Leases.Filter(
                    Asked.year(season, "season"), landowner, Asked.yesOrNo(open, "open")),
                page.after(LeasesApi::cursor).orElse(null),
                page.limit() + 1)
            .stream()
            .map(LeaseView::of)
            .toList(),
        lease -> lease.id().toString());
  }

  private static UUID cursor(String text) {
    try {
      return UUID.fromString(text);
    } catch (IllegalArgumentException e) {
      throw new InvalidField("after", "Give the next of the answer before, or leave it out.");
    }
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One lease")
  @APIResponse(
      responseCode = "200",
      description = "The lease",
      content =
          @Content(
              schema = @Schema(implementation = LeaseView.class),
              examples = @ExampleObject(name = "example", value = LeaseExamples.LEASE)))
  public LeaseView one(@PathParam("id") UUID id) {
    return LeaseView.of(leases.at(id));
  }

  @POST
  @Path("/{id}/terms")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Agree other terms for an open lease",
      description = "They hold for its whole season; the ones before stay in the book.")
  @APIResponse(
      responseCode = "201",
      description = "The lease",
      content =
          @Content(
              schema = @Schema(implementation = LeaseView.class),
              examples = @ExampleObject(name = "example", value = LeaseExamples.LEASE)))
  public Response agreeAnew(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples = @ExampleObject(name = "example", value = LeaseExamples.TERMS)))
          LeaseTerms said) {
    return named(maybeOnce.answer(key, said, () -> kept(leases.agreeAnew(id, said))));
  }

  @POST
  @Path("/{id}/taps")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Record a count of taps from a day on",
      description = "kind is set or agreed; without it, the kind that governs.")
  @APIResponse(
      responseCode = "201",
      description = "The lease",
      content =
          @Content(
              schema = @Schema(implementation = LeaseView.class),
              examples = @ExampleObject(name = "example", value = LeaseExamples.LEASE)))
  public Response count(
      @PathParam("id") UUID id,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = LeaseExamples.TAPS)))
          TapCount said) {
    return named(maybeOnce.answer(key, said, () -> kept(leases.count(id, said))));
  }

  private static Answer kept(Lease lease) {
    return ReadAnew.kept(URI.create("/api/leases/" + lease.id()));
  }

  private Response named(Response kept) {
    return ReadAnew.answer(kept, at -> one(UUID.fromString(ReadAnew.identity(at))));
  }
}
