package org.barreltally.web.access;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** A name and a password, as HTTP Basic carries them. */
final class PasswordPresented extends BaseAuthenticationRequest {

  private final String name;
  private final String password;

  PasswordPresented(String name, String password) {
    this.name = name;
    this.password = password;
  }

  String name() {
    return name;
  }

  String password() {
    return password;
  }
}
