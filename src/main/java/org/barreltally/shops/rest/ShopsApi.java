package org.barreltally.shops.rest;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.barreltally.shops.AgreeTerms;
import org.barreltally.shops.OpenShop;
import org.barreltally.shops.Shop;
import org.barreltally.shops.Shops;
import org.barreltally.web.Answer;
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

/** Shops on consignment and the terms agreed with them. */
@Path("/api/shops")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Shops")
public class ShopsApi {

  private static final String BODY = "Send the record as JSON.";

  private final Shops shops;
  private final MaybeOnce maybeOnce;

  ShopsApi(Shops shops, MaybeOnce maybeOnce) {
    this.shops = shops;
    this.maybeOnce = maybeOnce;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Make a shop known, with its first terms",
      description =
          "Its shelf becomes a place of the book: what stands there is still the maker's. missing says"
              + " who bears what is missing or broken: shop, maker, or split.")
  @APIResponse(
      responseCode = "201",
      description = "The shop",
      content =
          @Content(
              schema = @Schema(implementation = Shop.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.SHOP)))
  public Response open(
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = ShopExamples.OPEN)))
          OpenShop said) {
    return named(maybeOnce.answer(key, said, () -> kept(shops.open(said))));
  }

  @GET
  @Operation(summary = "Shops by code, with the terms that hold today")
  @APIResponse(
      responseCode = "200",
      description = "A part of the list",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one shop",
                      value = "{\"items\": [" + ShopExamples.SHOP + "]}")))
  public Page<Shop> list(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        shops.list(page.after(code -> code).orElse(null), page.limit() + 1), Shop::code);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One shop")
  @APIResponse(
      responseCode = "200",
      description = "The shop",
      content =
          @Content(
              schema = @Schema(implementation = Shop.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.SHOP)))
  public Shop one(@PathParam("code") String code) {
    return shops.at(code);
  }

  @POST
  @Path("/{code}/terms")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Agree terms with a shop from a day on",
      description = "Counts that were settled keep the terms they were settled by.")
  @APIResponse(
      responseCode = "201",
      description = "The shop",
      content =
          @Content(
              schema = @Schema(implementation = Shop.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.SHOP)))
  public Response agree(
      @PathParam("code") String code,
      @HeaderParam("Idempotency-Key") String key,
      @Valid
          @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(examples = @ExampleObject(name = "example", value = ShopExamples.TERMS)))
          AgreeTerms said) {
    return named(maybeOnce.answer(key, said, () -> kept(shops.agree(code, said))));
  }

  /**
   * What is kept of a shop beside its name.
   *
   * @param details address and whom to ask; null for none
   */
  public record Details(String details) {}

  @PUT
  @Path("/{code}/details")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Change or remove a shop's address and whom to ask",
      description = "Left out, they are removed: nothing else keeps them.")
  @APIResponse(
      responseCode = "200",
      description = "The shop",
      content =
          @Content(
              schema = @Schema(implementation = Shop.class),
              examples = @ExampleObject(name = "example", value = ShopExamples.SHOP)))
  public Shop describe(
      @PathParam("code") String code,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "example",
                              value = "{\"details\": \"2 Mill Street, Fernby; ask inside\"}")))
          Details said) {
    return shops.describe(code, said.details());
  }

  private static Answer kept(Shop shop) {
    return ReadAnew.kept(URI.create("/api/shops/" + shop.code()));
  }

  private Response named(Response kept) {
    return ReadAnew.answer(kept, at -> one(ReadAnew.identity(at)));
  }
}
