package org.barreltally.errands.rest;

import java.time.Instant;
import java.util.UUID;
import org.barreltally.errands.Errand;
import org.barreltally.errands.Why;

/**
 * How far work is that somebody asked for.
 *
 * @param state {@code waiting, at-work, done, refused, broken-off}
 * @param stepsDone labels, chapters or lines that are done
 * @param steps how many there are, once that is known
 * @param paper the path of the paper that came of it
 * @param leadsTo the page where the result stands
 * @param problem why it was refused: code, title, detail, errors
 */
public record ErrandView(
    UUID id,
    String kind,
    String state,
    Instant askedAt,
    int stepsDone,
    Integer steps,
    Instant endedAt,
    String paper,
    String leadsTo,
    Why problem) {

  public static ErrandView of(Errand errand) {
    return new ErrandView(
        errand.id(),
        errand.kind(),
        errand.state().code(),
        errand.askedAt(),
        errand.stepsDone(),
        errand.steps(),
        errand.endedAt(),
        errand.fileName() == null ? null : "/api/errands/" + errand.id() + "/paper",
        errand.leadsTo(),
        errand.problem());
  }
}
