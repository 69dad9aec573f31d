package org.barreltally.shows;

import java.util.UUID;
import org.barreltally.refusal.Refusal;

/** No to-do of that id belongs to this show. */
public final class NoSuchToDo extends Refusal {
  public NoSuchToDo(UUID toDo, Show show) {
    super(
        Kind.NOT_FOUND,
        "unknown-to-do",
        "No such to-do",
        "There is nothing to do of id %s after %s.".formatted(toDo, show.words()));
  }
}
