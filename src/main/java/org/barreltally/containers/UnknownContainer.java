package org.barreltally.containers;

import org.barreltally.refusal.Refusal;

/** A container is named that the book does not know. */
public final class UnknownContainer extends Refusal {

  /** The address names the container. */
  public UnknownContainer(String code) {
    super(Kind.NOT_FOUND, "unknown-container", "No such container", detail(code));
  }

  /** A field of the request names the container. */
  public UnknownContainer(String code, String field) {
    super(Kind.INVALID, "unknown-container", "No such container", detail(code), field);
  }

  private static String detail(String code) {
    return "There is no container “"
        + code
        + "”. List them at /api/containers, or add it there with its contents.";
  }
}
