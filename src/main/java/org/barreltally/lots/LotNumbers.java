package org.barreltally.lots;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Gives lots their codes: {@code S26-001} for syrup in bulk by season, {@code P260620-1} for jars
 * by the day they were packed.
 */
@ApplicationScoped
public class LotNumbers {

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyMMdd", Locale.ROOT);

  private final EntityManager entities;

  public LotNumbers(EntityManager entities) {
    this.entities = entities;
  }

  public String nextBulk(int season) {
    String prefix = "S%02d-".formatted(season % 100);
    return next(prefix, prefix + "%03d");
  }

  public String nextPacked(LocalDate packedOn) {
    String prefix = "P" + DAY.format(packedOn) + "-";
    return next(prefix, prefix + "%d");
  }

  /** Other writers of the same prefix wait here until this transaction ends: call it late. */
  private String next(String prefix, String format) {
    String code;
    do {
      Object number =
          entities
              .createNativeQuery(
                  "INSERT INTO lot_numbers AS n (prefix, last) VALUES (:prefix, 1)"
                      + " ON CONFLICT (prefix) DO UPDATE SET last = n.last + 1 RETURNING last")
              .setParameter("prefix", prefix)
              .getSingleResult();
      code = format.formatted(((Number) number).intValue());
    } while (taken(code));
    return code;
  }

  /** An owner's own lot codes from before the book began may look like ours. */
  private boolean taken(String code) {
    return !entities
        .createNativeQuery("SELECT 1 FROM lots WHERE code = :code")
        .setParameter("code", code)
        .getResultList()
        .isEmpty();
  }
}
