package org.barreltally.web.access;

import io.quarkus.security.identity.request.AuthenticationRequest;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Locale;
import java.util.Optional;

/** Reads the Authorization header: Basic (RFC 7617, in UTF-8) or Bearer (RFC 6750). */
final class AuthorizationHeader {

  private AuthorizationHeader() {}

  /**
   * What the header presents; empty if it is neither scheme or malformed.
   *
   * @param address of the network it came from
   */
  static Optional<AuthenticationRequest> read(String header, String address) {
    int space = header.indexOf(' ');
    if (space < 0) {
      return Optional.empty();
    }
    String credentials = header.substring(space + 1).strip();
    return switch (header.substring(0, space).toLowerCase(Locale.ROOT)) {
      case "basic" -> basic(credentials, address);
      case "bearer" -> Optional.of(new SecretPresented(SecretPresented.Kind.TOKEN, credentials));
      default -> Optional.empty();
    };
  }

  private static Optional<AuthenticationRequest> basic(String credentials, String address) {
    try {
      String pair = new String(Base64.getDecoder().decode(credentials), StandardCharsets.UTF_8);
      int colon = pair.indexOf(':');
      return colon < 0
          ? Optional.empty()
          : Optional.of(
              new PasswordPresented(pair.substring(0, colon), pair.substring(colon + 1), address));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
