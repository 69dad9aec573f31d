package org.barreltally.containers.rest;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.function.Function;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The container sizes. */
@Path("/api/containers")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Canning")
public class ContainersApi {

  private final Containers containers;

  ContainersApi(Containers containers) {
    this.containers = containers;
  }

  @GET
  @Operation(summary = "List the container sizes by code")
  public Page<Container> list(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        containers.list(page.after(Function.identity()).orElse(null), page.limit() + 1),
        Container::code);
  }

  @GET
  @Path("/{code}")
  @Operation(summary = "One container size")
  @APIResponse(
      responseCode = "200",
      description = "The container",
      content =
          @Content(
              schema = @Schema(implementation = Container.class),
              examples =
                  @ExampleObject(
                      name = "pint",
                      value =
                          """
                          {"code": "PT", "name": "Pint jug",
                           "netContents": {"value": 1, "unit": "pt"}, "material": "plastic"}
                          """)))
  public Container one(@PathParam("code") String code) {
    return containers.at(code);
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Add a container size",
      description =
          "Contents are nominal, at 68 °F (20 °C), 1 mL to 1000 L. The brim is answered in the unit"
              + " of the contents, the empty weight in grams.")
  @APIResponse(
      responseCode = "201",
      description = "Added",
      content = @Content(schema = @Schema(implementation = Container.class)))
  public Response add(
      @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "shaped glass",
                              value =
                                  """
                                  {"code": "LEAF250", "name": "Glass leaf, 250 mL",
                                   "netContents": {"value": 250, "unit": "mL"},
                                   "brimful": {"value": 265, "unit": "mL"},
                                   "emptyWeight": {"value": 310, "unit": "g"},
                                   "material": "glass"}
                                  """)))
          Container said) {
    Container added = containers.add(said);
    return Response.created(URI.create("/api/containers/" + added.code())).entity(added).build();
  }
}
