package org.barreltally.people.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.time.Instant;
import java.util.List;
import org.barreltally.people.Crew;
import org.barreltally.people.Member;
import org.barreltally.people.Role;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The people who sign in. The owner alone sees to them. */
@Path("/api/people")
@RolesAllowed("owner")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "People")
public class PeopleApi {

  private static final String BODY = "Send the record as JSON.";
  private static final String GIVEN =
      """
      {"name": "marla", "displayName": "Marla Quince", "role": "table",
       "joinedAt": "2026-06-01T12:00:00Z", "codes": false, "password": "7f3kd-0q2zn-vx9ht-c5mwa"}
      """;

  private static final String MARLA =
      """
      {"name": "marla", "displayName": "Marla Quince", "role": "table",
       "joinedAt": "2026-06-01T12:00:00Z", "codes": false}
      """;
  private static final String LEFT =
      """
      {"name": "marla", "displayName": "Marla Quince", "role": "table",
       "joinedAt": "2026-06-01T12:00:00Z", "leftAt": "2026-11-02T18:30:00Z", "codes": false}
      """;

  /** Somebody who is to sign in. */
  public record Joining(String name, String displayName, Role role) {}

  /** A role to change to. */
  public record NewRole(Role role) {}

  /**
   * Somebody of the sugarhouse.
   *
   * @param codes whether a code is asked for beside the password
   * @param password shown where it was just given, and never again
   */
  public record Somebody(
      String name,
      String displayName,
      Role role,
      Instant joinedAt,
      Instant leftAt,
      boolean codes,
      String password) {

    static Somebody of(Member member) {
      return of(member, null);
    }

    static Somebody of(Crew.Given given) {
      return of(given.member(), given.password());
    }

    private static Somebody of(Member member, String password) {
      return new Somebody(
          member.name(),
          member.displayName(),
          member.role(),
          member.joinedAt(),
          member.leftAt(),
          member.codes(),
          password);
    }
  }

  /** Everybody; a sugarhouse has few people. */
  public record Everybody(List<Somebody> items) {}

  private final Crew crew;

  @Inject
  PeopleApi(Crew crew) {
    this.crew = crew;
  }

  @GET
  @Operation(summary = "Everybody who signs in, or did, by name")
  @APIResponse(
      responseCode = "200",
      description = "Everybody",
      content =
          @Content(
              schema = @Schema(implementation = Everybody.class),
              examples = @ExampleObject(name = "a helper", value = "{\"items\": [" + MARLA + "]}")))
  public Everybody list() {
    return new Everybody(crew.list().stream().map(Somebody::of).toList());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Give somebody a way to sign in",
      description =
          "role is owner, canning, table, packing or bookkeeper. The password is made here and shown"
              + " only in this answer; they change it themselves.")
  @APIResponse(
      responseCode = "201",
      description = "Who it is, with the password",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples = @ExampleObject(name = "a helper at the table", value = GIVEN)))
  public Response join(
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "a helper at the table",
                              value =
                                  """
                                  {"name": "marla", "displayName": "Marla Quince", "role": "table"}
                                  """)))
          Joining said) {
    Crew.Given given = crew.join(said.name(), said.displayName(), said.role());
    return Response.created(UriBuilder.fromPath("/api/people/{name}").build(said.name()))
        .entity(Somebody.of(given))
        .build();
  }

  @GET
  @Path("/{name}")
  @Operation(summary = "Somebody by the name they sign in with")
  @APIResponse(
      responseCode = "200",
      description = "Who it is",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples = @ExampleObject(name = "a helper", value = MARLA)))
  public Somebody one(@PathParam("name") String name) {
    return Somebody.of(crew.named(name));
  }

  @POST
  @Path("/{name}/role")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Give somebody another role",
      description = "They are signed out. One owner has to stay.")
  public Somebody changeRole(
      @PathParam("name") String name,
      @NotNull(message = BODY)
          @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "to the canner",
                              value = "{\"role\": \"canning\"}")))
          NewRole said) {
    return Somebody.of(crew.changeRole(name, said.role()));
  }

  @POST
  @Path("/{name}/password")
  @Operation(
      summary = "Give somebody a new password",
      description = "For a lost one. It is shown only in this answer; they are signed out.")
  @APIResponse(
      responseCode = "200",
      description = "Who it is, with the password",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples = @ExampleObject(name = "a helper", value = GIVEN)))
  public Somebody newPassword(@PathParam("name") String name) {
    return Somebody.of(crew.newPassword(name));
  }

  @DELETE
  @Path("/{name}/codes")
  @Operation(
      summary = "Ask somebody for codes no longer",
      description = "For a lost phone. They are signed out and may set up codes anew.")
  @APIResponse(
      responseCode = "200",
      description = "Who it is",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples = @ExampleObject(name = "a helper", value = MARLA)))
  public Somebody stopCodes(@PathParam("name") String name) {
    return Somebody.of(crew.stopCodes(name));
  }

  @POST
  @Path("/{name}/leave")
  @Operation(
      summary = "Let somebody sign in no longer",
      description = "They are signed out and their tokens revoked. What they did keeps their name.")
  @APIResponse(
      responseCode = "200",
      description = "Who it is",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples = @ExampleObject(name = "a helper who left", value = LEFT)))
  public Somebody leave(@PathParam("name") String name) {
    return Somebody.of(crew.leave(name));
  }

  @DELETE
  @Path("/{name}/names")
  @Operation(
      summary = "Remove the names of somebody who left",
      description =
          "What they did stays with their record, which is called by a number from then on.")
  @APIResponse(
      responseCode = "200",
      description = "Who it was",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples =
                  @ExampleObject(
                      name = "a helper who left",
                      value =
                          """
                          {"name": "left-6f2c9a10", "displayName": "left-6f2c9a10", "role": "table",
                           "joinedAt": "2026-06-01T12:00:00Z", "leftAt": "2026-11-02T18:30:00Z", "codes": false}
                          """)))
  public Somebody removeNames(@PathParam("name") String name) {
    return Somebody.of(crew.removeNames(name));
  }

  @POST
  @Path("/{name}/return")
  @Operation(summary = "Let somebody who left sign in again, with a new password")
  @APIResponse(
      responseCode = "200",
      description = "Who it is, with the password",
      content =
          @Content(
              schema = @Schema(implementation = Somebody.class),
              examples = @ExampleObject(name = "a helper", value = GIVEN)))
  public Somebody comeBack(@PathParam("name") String name) {
    return Somebody.of(crew.comeBack(name));
  }
}
