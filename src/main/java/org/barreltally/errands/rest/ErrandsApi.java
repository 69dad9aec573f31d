package org.barreltally.errands.rest;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.barreltally.errands.Errand;
import org.barreltally.errands.ErrandKind;
import org.barreltally.errands.Errands;
import org.barreltally.errands.Outcome;
import org.barreltally.web.Answer;
import org.barreltally.web.Once;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.barreltally.web.problem.Problems;
import org.barreltally.web.problem.Refused;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Work that takes a while: asked for, left, and found again. */
@Path("/api/errands")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Errands")
public class ErrandsApi {

  private final Errands errands;
  private final Once once;
  private final ObjectMapper mapper;
  private final Problems problems;

  ErrandsApi(Errands errands, Once once, ObjectMapper mapper, Problems problems) {
    this.errands = errands;
    this.once = once;
    this.mapper = mapper;
    this.problems = problems;
  }

  @GET
  @Operation(
      summary = "Work that you asked for in the last two days, the newest first",
      description = "The owner sees what everybody asked for.")
  public Page<ErrandView> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        errands.list(page.after(UUID::fromString).orElse(null), page.limit() + 1).stream()
            .map(ErrandView::of)
            .toList(),
        view -> view.id().toString());
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "How far one piece of work is, and what came of it")
  public ErrandView one(@PathParam("id") UUID id) {
    return ErrandView.of(errands.at(id));
  }

  @GET
  @Path("/{id}/paper")
  @Produces("application/pdf")
  @Operation(summary = "The paper that came of it")
  @APIResponse(
      responseCode = "200",
      description = "The paper",
      content =
          @Content(
              mediaType = "application/pdf",
              examples = @ExampleObject(name = "paper", value = "%PDF-1.5 …")))
  public Response paper(@PathParam("id") UUID id) {
    Outcome outcome = errands.paper(id);
    return Response.ok(outcome.paper(), outcome.mediaType())
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + outcome.fileName() + "\"")
        .build();
  }

  @POST
  @Path("/{kind}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Ask for work that takes a while",
      description =
          "kind is season-book (season, paper), labels (lot, container, count, sheet, startAt,"
              + " panelArea, gtin, award); for files see from-file. It is done after the answer, one at a time, in"
              + " your name; what it would have been refused for stands in problem. Results are kept for"
              + " two days. If the program stops in the middle, nothing of it is half in the book, and it"
              + " says broken-off after a minute.")
  @APIResponse(
      responseCode = "202",
      description = "Taken; the Location says how far it is",
      content = @Content(schema = @Schema(implementation = ErrandView.class)))
  public Response ask(
      @PathParam("kind") String kind,
      @HeaderParam("Idempotency-Key") String key,
      @NotNull(message = "Send the record as JSON.")
          @RequestBody(
              content =
                  @Content(
                      schema = @Schema(implementation = Object.class),
                      examples =
                          @ExampleObject(name = "a season's book", value = "{\"season\": 2026}")))
          JsonNode asked) {
    return ask(errands.kind(kind), key, asked);
  }

  @POST
  @Path("/{kind}/from-file")
  @Consumes("text/csv")
  @Operation(
      summary = "Ask for a long file to be taken",
      description =
          "kind is opening-stock, or gift-recipients with buyer, or with order to add to one. As for"
              + " other work that takes a while; all of the file is taken, or nothing.")
  @APIResponse(
      responseCode = "202",
      description = "Taken; the Location says how far it is",
      content = @Content(schema = @Schema(implementation = ErrandView.class)))
  public Response askFromFile(
      @PathParam("kind") String kind,
      @HeaderParam("Idempotency-Key") String key,
      @QueryParam("buyer") String buyer,
      @QueryParam("order") String order,
      @RequestBody(
              content =
                  @Content(
                      mediaType = "text/csv",
                      schema = @Schema(implementation = String.class),
                      examples =
                          @ExampleObject(
                              name = "a barrel",
                              value =
                                  "kind,tag,season,filledOn,material,gross,tare,brix,transmittance,taste\n"
                                      + "barrel,B-17,2025,2025-03-22,stainless,486.5 lb,42 lb,66.9,62,clean\n")))
          byte[] file) {
    ObjectNode asked = mapper.createObjectNode();
    asked.put("file", new String(file, StandardCharsets.UTF_8));
    if (buyer != null) {
      asked.put("buyer", buyer);
    }
    if (order != null) {
      asked.put("order", order);
    }
    return ask(errands.kind(kind), key, asked);
  }

  private <T> Response ask(ErrandKind<T> kind, String key, JsonNode asked) {
    try {
      return ask(kind, key, mapper.treeToValue(asked, kind.record()));
    } catch (JsonProcessingException e) {
      throw new Refused(problems.of(e));
    }
  }

  /** As {@link #ask(String, String, JsonNode)}, for a page that has read what was typed. */
  public <T> Response ask(ErrandKind<T> kind, String key, T record) {
    return once.answer(
        key,
        record,
        () -> {
          Errand errand = errands.ask(kind, record);
          return new Answer(202, URI.create("/api/errands/" + errand.id()), ErrandView.of(errand));
        });
  }
}
