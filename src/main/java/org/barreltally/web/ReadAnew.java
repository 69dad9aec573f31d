package org.barreltally.web;

import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.function.Function;

/**
 * Answers whose record holds names of people. Kept beside the request's id is the record's address
 * alone, so that a name removed later is not kept there; the record is read anew at each repeat.
 */
public final class ReadAnew {

  private ReadAnew() {}

  /** What is kept of an answer: where its record stands. */
  public static Answer kept(URI location) {
    return Answer.created(location, null);
  }

  /**
   * The answer with its record.
   *
   * @param kept as {@link Once} or {@link MaybeOnce} gave it
   * @param record reads what stands at an address
   */
  public static Response answer(Response kept, Function<URI, Object> record) {
    return Response.status(kept.getStatus())
        .location(kept.getLocation())
        .entity(record.apply(kept.getLocation()))
        .build();
  }

  /** The last part of an address's path: the identity of the record that stands there. */
  public static String identity(URI address) {
    String path = address.getPath();
    return path.substring(path.lastIndexOf('/') + 1);
  }
}
