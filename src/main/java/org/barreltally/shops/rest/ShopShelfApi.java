package org.barreltally.shops.rest;

import jakarta.validation.Valid;
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
import jakarta.ws.rs.core.UriBuilder;
import java.util.function.Supplier;
import org.barreltally.shops.Accounts;
import org.barreltally.shops.Bringing;
import org.barreltally.shops.CountShop;
import org.barreltally.shops.CountingShelves;
import org.barreltally.shops.Delivery;
import org.barreltally.shops.MoveJars;
import org.barreltally.shops.Paid;
import org.barreltally.shops.PayShop;
import org.barreltally.shops.ShelfCount;
import org.barreltally.shops.Statement;
import org.barreltally.web.Answer;
import org.barreltally.web.Asked;
import org.barreltally.web.Once;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What comes to a shop's shelf, is counted there and paid. */
@Path("/api/shops/{code}")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Shops")
public class ShopShelfApi {

  private static final String BODY = "Send the record as JSON.";

  private final Bringing bringing;
  private final CountingShelves counting;
  private final Accounts accounts;
  private final Once once;

  ShopShelfApi(Bringing bringing, CountingShelves counting, Accounts accounts, Once once) {
    this.bringing = bringing;
    this.counting = counting;
    this.accounts = accounts;
    this.once = once;
  }

  @POST
  @Path("/deliveries")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Bring jars to a shop",
      description =
          "All lines or none; only jars that nobody was promised, of lots that are not held.")
  @APIResponse(
      responseCode = "201",
      description = "What was brought",
      content =
          @Content(
              schema = @Schema(implementation = Delivery.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.BROUGHT)))
  public Response bring(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = ShopExamples.BRING)))
          MoveJars said) {
    return kept(code, key, said, () -> bringing.bring(code, said));
  }

  @POST
  @Path("/fetchings")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Fetch jars home from a shop",
      description = "Count the shelf first where the book has fewer there than are fetched.")
  @APIResponse(
      responseCode = "201",
      description = "What was fetched",
      content =
          @Content(
              schema = @Schema(implementation = Delivery.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.BROUGHT)))
  public Response fetch(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = ShopExamples.BRING)))
          MoveJars said) {
    return kept(code, key, said, () -> bringing.fetch(code, said));
  }

  @POST
  @Path("/counts")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Count a shop's whole shelf and say what is due",
      description =
          "What is gone was sold, unless the shop says what it sold: then the rest is missing, and the"
              + " terms say who bears it. A line without lot counts its size over all lots no other line"
              + " names; the oldest are taken to have gone first. Due per line: price × (sold + what the shop bears) × (1 −"
              + " commission), rounded once, half up. To take a count back, reverse its movement.")
  @APIResponse(
      responseCode = "201",
      description = "What the count came to",
      content =
          @Content(
              schema = @Schema(implementation = ShelfCount.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.COUNTED)))
  public Response count(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = ShopExamples.COUNT)))
          CountShop said) {
    return kept(code, key, said, () -> counting.count(code, said));
  }

  @POST
  @Path("/payments")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Book money that a shop paid",
      description = "An amount below zero says that the shop was paid back.")
  @APIResponse(
      responseCode = "201",
      description = "The payment",
      content =
          @Content(
              schema = @Schema(implementation = Paid.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.PAID)))
  public Response pay(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = ShopExamples.PAY)))
          PayShop said) {
    return kept(code, key, said, () -> accounts.pay(code, said));
  }

  @GET
  @Path("/statement")
  @Operation(
      summary = "What stood with a shop, what it owes and paid",
      description = "from and to are days; without them, from the beginning to today.")
  @APIResponse(
      responseCode = "200",
      description = "The statement",
      content =
          @Content(
              schema = @Schema(implementation = Statement.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.STATEMENT)))
  public Statement statement(
      @PathParam("code") String code,
      @QueryParam("from") String from,
      @QueryParam("to") String to) {
    return accounts.statement(code, Asked.day(from, "from"), Asked.day(to, "to"));
  }

  private Response kept(String code, String key, Object said, Supplier<Object> action) {
    return once.answer(
        key,
        said,
        () ->
            Answer.created(
                UriBuilder.fromPath("/api/shops/{code}/statement").build(code), action.get()));
  }
}
