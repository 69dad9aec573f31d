package org.barreltally.books;

import java.util.Optional;

/** Knows for which book the request at hand asks. */
public interface BookAsked {

  /** That book; empty outside of requests and for requests that belong to none. */
  Optional<Book> book();
}
