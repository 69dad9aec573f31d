package org.barreltally.start;

import java.net.BindException;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.flywaydb.core.api.FlywayException;

/** Tells what a person can mend in a failed start of the application from a defect. */
final class StartFault {

  private StartFault() {}

  /** The sentence for a taken port or a database that goes wrong; empty for anything else. */
  static Optional<CannotStart> sentence(Throwable fault, int port) {
    Optional<Throwable> bind = cause(fault, BindException.class::isInstance);
    if (bind.isPresent()) {
      return Optional.of(HttpPort.taken(port, bind.get()));
    }
    Optional<Throwable> sql = cause(fault, SQLException.class::isInstance);
    return cause(fault, FlywayException.class::isInstance)
        .map(
            flyway ->
                "The database could not be brought up to date: "
                    + DatabaseFault.oneLine(sql.orElse(flyway)))
        .or(() -> sql.map(s -> "The database refused: " + DatabaseFault.oneLine(s)))
        .map(text -> new CannotStart(text, fault));
  }

  private static Optional<Throwable> cause(Throwable fault, Predicate<Throwable> wanted) {
    return Stream.iterate(fault, t -> t != null, Throwable::getCause)
        .limit(50)
        .filter(wanted)
        .findFirst();
  }
}
