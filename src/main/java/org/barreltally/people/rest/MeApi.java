package org.barreltally.people.rest;

import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Passwords;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The person who asks. */
@Path("/api/me")
@Tag(name = "People")
public class MeApi {

  /** Who is signed in, and in which role. */
  public record Me(String name, String role) {}

  /** A change of password: the present one and the one wanted. */
  public record PasswordChange(String current, String next) {}

  private final CurrentUser user;
  private final Passwords passwords;

  @Inject
  MeApi(CurrentUser user, Passwords passwords) {
    this.user = user;
    this.passwords = passwords;
  }

  @GET
  @Operation(summary = "Say who is signed in")
  public Me me() {
    return new Me(user.name(), user.role());
  }

  @POST
  @Path("/password")
  @Operation(summary = "Change the password; ends the person's sessions")
  public void changePassword(PasswordChange change) {
    passwords.change(user.name(), change.current(), change.next());
  }
}
