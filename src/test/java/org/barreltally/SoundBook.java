package org.barreltally;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jakarta.enterprise.inject.spi.CDI;
import java.util.List;
import org.barreltally.ledger.Invariants;

/** The invariants of the book, asked after a test as the owner asks them. */
public final class SoundBook {

  private SoundBook() {}

  /** Fails with the rows that break an invariant. */
  public static void check() {
    List<Invariants.Finding> found = CDI.current().select(Invariants.class).get().check();
    assertEquals(Invariants.NAMES, found.stream().map(Invariants.Finding::name).toList());
    assertEquals(List.of(), found.stream().filter(f -> !f.violations().isEmpty()).toList());
  }
}
