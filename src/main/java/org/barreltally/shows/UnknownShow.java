package org.barreltally.shows;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No show has that id. */
public final class UnknownShow extends Refusal {

  /** The address names it. */
  public UnknownShow(UUID id) {
    super(Kind.NOT_FOUND, "unknown-show", "No such show", detail(id));
  }

  /** A field of the request names it. */
  public UnknownShow(UUID id, String field) {
    super(Kind.INVALID, "unknown-show", "No such show", detail(id), field);
  }

  private static String detail(UUID id) {
    return "There is no show " + id + ". List them at /api/shows.";
  }
}
