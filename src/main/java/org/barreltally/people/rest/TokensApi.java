package org.barreltally.people.rest;

import jakarta.inject.Inject;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.people.AccessToken;
import org.barreltally.people.AccessTokens;
import org.barreltally.people.CurrentUser;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The tokens of the person who asks. */
@Path("/api/tokens")
@Tag(name = "People")
public class TokensApi {

  /** A token wanted. Without {@code expiresOn}, its last day of use, it does not expire. */
  public record NewToken(String name, LocalDate expiresOn) {}

  /** A token made. {@code token} is its secret, shown here and never again. */
  public record MadeToken(UUID id, String name, LocalDate expiresOn, String token) {}

  /** All tokens of a person; there are never more than one answer holds. */
  public record TokenList(List<AccessToken> items) {}

  private final CurrentUser user;
  private final AccessTokens tokens;

  @Inject
  TokensApi(CurrentUser user, AccessTokens tokens) {
    this.user = user;
    this.tokens = tokens;
  }

  @POST
  @Operation(summary = "Make a token; its secret is shown only in this answer")
  @APIResponse(
      responseCode = "201",
      description = "Made",
      content = @Content(schema = @Schema(implementation = MadeToken.class)))
  public Response issue(NewToken wanted) {
    AccessTokens.Issued issued = tokens.issue(user.id(), wanted.name(), wanted.expiresOn());
    AccessToken token = issued.token();
    return Response.created(URI.create("/api/tokens/" + token.id()))
        .entity(new MadeToken(token.id(), token.name(), token.expiresOn(), issued.secret()))
        .build();
  }

  @GET
  @Operation(summary = "List own tokens that are not revoked, without their secrets")
  public TokenList list() {
    return new TokenList(tokens.of(user.id()));
  }

  @DELETE
  @Path("/{id}")
  @Operation(summary = "Revoke a token")
  public void revoke(@PathParam("id") UUID id) {
    tokens.revoke(user.id(), id);
  }
}
