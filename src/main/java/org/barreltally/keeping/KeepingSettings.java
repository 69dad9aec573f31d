package org.barreltally.keeping;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.barreltally.books.Book;

/**
 * Where backups go and how many are kept.
 *
 * @param folder the folder of the backups
 * @param secondPlace a folder that gets a copy of each; empty for none
 * @param every how old the last one is when the next is made by itself; zero for never
 * @param keep how many are kept, at each place
 * @param warnAfter how old the last one is when the start page says so
 */
public record KeepingSettings(
    Path folder, Optional<Path> secondPlace, Duration every, int keep, Duration warnAfter) {

  /** The same for one of several books, whose backups lie in folders of its name. */
  KeepingSettings of(Book book) {
    return book.name().isEmpty()
        ? this
        : new KeepingSettings(
            folder.resolve(book.name()),
            secondPlace.map(place -> place.resolve(book.name())),
            every,
            keep,
            warnAfter);
  }
}
