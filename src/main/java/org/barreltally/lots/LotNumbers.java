package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.barreltally.ledger.Bundle;

/**
 * Gives lots their codes: {@code S26-001} for syrup in bulk by season, {@code P260620-1} for jars
 * by the day they were packed.
 */
@ApplicationScoped
public class LotNumbers {

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyMMdd", Locale.ROOT);
  private static final int BULK_DIGITS = 3;
  private static final int PACKED_DIGITS = 1;

  /**
   * Other writers of the same prefix wait here until this transaction ends. An owner's own lot
   * codes from before the book began may look like ours, so it says whether the code is taken.
   */
  private static final String NEXT =
      """
      WITH given AS (
        INSERT INTO lot_numbers AS n (prefix, last) VALUES (?, 1)
          ON CONFLICT (prefix) DO UPDATE SET last = n.last + 1
          RETURNING prefix || lpad(last::text, greatest(?, length(last::text)), '0') AS code)
      SELECT code, EXISTS (SELECT 1 FROM lots WHERE lots.code = given.code) FROM given
      """;

  private final EntityManager entities;

  public LotNumbers(EntityManager entities) {
    this.entities = entities;
  }

  /** A code that was asked for. */
  public final class Next {
    private final String prefix;
    private final int digits;
    private String code;
    private boolean taken;

    private Next(String prefix, int digits) {
      this.prefix = prefix;
      this.digits = digits;
    }

    private Next askWith(Bundle ask) {
      ask.ask(
          NEXT,
          row -> {
            code = row.getString(1);
            taken = row.getBoolean(2);
          },
          prefix,
          digits);
      return this;
    }

    /** The code, once the question was sent. */
    public String code() {
      while (taken) {
        ask();
      }
      return code;
    }

    private Next ask() {
      Bundle ask = Bundle.byKeys();
      askWith(ask);
      ask.send(entities);
      return this;
    }
  }

  /** The next code of syrup in bulk. Others of the same season wait from here on: call it late. */
  public String nextBulk(int season) {
    return new Next("S%02d-".formatted(season % 100), BULK_DIGITS).ask().code();
  }

  /** The next code of jars, asked for together with other things. Others of the day wait then. */
  public Next nextPacked(LocalDate packedOn, Bundle ask) {
    return new Next("P" + DAY.format(packedOn) + "-", PACKED_DIGITS).askWith(ask);
  }
}
