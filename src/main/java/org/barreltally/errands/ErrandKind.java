package org.barreltally.errands;

import java.util.Set;

/**
 * Something that can be asked for as an errand. Says no as ever, by a {@link
 * org.barreltally.refusal.Refusal}, which whoever asked finds in place of a result.
 *
 * @param <T> what is asked, as the interface reads JSON
 */
public interface ErrandKind<T> {

  /** Its name in addresses, for example {@code season-book}. */
  String code();

  Class<T> record();

  /** The codes of the roles that may ask for it; empty for all. */
  Set<String> roles();

  /** Does it, in a transaction of its own if it writes. */
  Outcome run(T asked, Progress progress);
}
