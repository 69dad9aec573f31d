package org.barreltally.web.access;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** A name and a password, as HTTP Basic carries them. */
final class PasswordPresented extends BaseAuthenticationRequest {

  private final String name;
  private final String password;
  private final String address;

  /**
   * @param address of the network it came from
   */
  PasswordPresented(String name, String password, String address) {
    this.name = name;
    this.password = password;
    this.address = address;
  }

  String name() {
    return name;
  }

  String address() {
    return address;
  }

  String password() {
    return password;
  }
}
