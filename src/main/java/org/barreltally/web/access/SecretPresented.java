package org.barreltally.web.access;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** A random secret: an access token, or the one a session's cookie holds. */
final class SecretPresented extends BaseAuthenticationRequest {

  enum Kind {
    TOKEN,
    SESSION
  }

  private final Kind kind;
  private final String secret;

  SecretPresented(Kind kind, String secret) {
    this.kind = kind;
    this.secret = secret;
  }

  Kind kind() {
    return kind;
  }

  String secret() {
    return secret;
  }
}
