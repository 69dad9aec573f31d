package org.barreltally.web;

import static io.restassured.RestAssured.given;

import io.restassured.specification.RequestSpecification;

/** How the tests sign in. */
final class Ask {

  static final String OWNER_PASSWORD = "only for the tests";

  private Ask() {}

  static RequestSpecification asOwner() {
    return given().auth().preemptive().basic("owner", OWNER_PASSWORD);
  }

  static RequestSpecification json(String body) {
    return asOwner().contentType("application/json").body(body);
  }
}
