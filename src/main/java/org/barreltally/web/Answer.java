package org.barreltally.web;

import java.net.URI;

/**
 * What a request that was done is answered with, the first time and at every repeat. The body is
 * kept beside the request id, so it must hold no name or address of a person: give an identity to
 * read instead.
 *
 * @param status a 2xx status
 * @param location where the new record stands, or null
 * @param body what is written as JSON, or null
 */
public record Answer(int status, URI location, Object body) {

  /** 201 with where the new record stands, and the record. */
  public static Answer created(URI location, Object body) {
    return new Answer(201, location, body);
  }

  /** 200 with a body. */
  public static Answer ok(Object body) {
    return new Answer(200, null, body);
  }
}
