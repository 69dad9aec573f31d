package org.barreltally.people.rest;

import jakarta.inject.Inject;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.barreltally.people.Codes;
import org.barreltally.people.CurrentUser;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The codes that the person who asks gives beside the password. */
@Path("/api/me/codes")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "People")
public class CodesApi {

  private static final String BODY = "Send the record as JSON.";

  /** The present password, so that nobody does it at a screen that was left open. */
  public record Beginning(String current) {}

  /** The first code that the phone shows. */
  public record FirstCode(String code) {}

  /** The spare codes, each good once, shown here and never again. */
  public record SpareCodes(List<String> spare) {}

  /** The present password and a code of the phone, or a spare one. */
  public record Stopping(String current, String code) {}

  private final CurrentUser user;
  private final Codes codes;

  @Inject
  CodesApi(CurrentUser user, Codes codes) {
    this.user = user;
    this.codes = codes;
  }

  @GET
  @Operation(summary = "Whether pages ask the person for a code at sign-in")
  public Codes.State state() {
    return codes.state(user.id());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Begin to set up codes",
      description =
          "The phone takes the seed, typed or scanned as a code of the address. Nothing is asked for"
              + " until a code of it is confirmed.")
  public Codes.Begun begin(@NotNull(message = BODY) Beginning said) {
    return codes.begin(user.name(), said.current());
  }

  @POST
  @Path("/confirm")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Confirm the first code; ends the person's sessions",
      description =
          "From then on pages ask for a code at sign-in, and a password by header opens nothing:"
              + " scripts need a token. Write the spare codes down.")
  public SpareCodes confirm(@NotNull(message = BODY) FirstCode said) {
    return new SpareCodes(codes.confirm(user.id(), said.code()));
  }

  @POST
  @Path("/stop")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Ask for codes no longer; ends the person's sessions")
  public void stop(@NotNull(message = BODY) Stopping said) {
    codes.stop(user.name(), said.current(), said.code());
  }

  /** The seed that waits for its first code, as a page shows it again. */
  public Codes.Begun waiting() {
    return codes.waiting(user.id(), user.name());
  }
}
