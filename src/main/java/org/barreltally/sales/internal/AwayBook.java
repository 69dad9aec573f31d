package org.barreltally.sales.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Ids;
import org.barreltally.sales.away.PaperNumber;
import org.barreltally.sales.away.SellAway;
import org.hibernate.Session;

/** Buyers, kept apart from the sales, and the numbers of papers. */
@ApplicationScoped
public class AwayBook {

  private final EntityManager entities;
  private final Ids ids;

  AwayBook(EntityManager entities, Ids ids) {
    this.entities = entities;
    this.ids = ids;
  }

  public UUID add(SellAway.Buyer buyer) {
    UUID id = ids.next();
    entities
        .unwrap(Session.class)
        .doWork(
            connection -> {
              try (var insert =
                  connection.prepareStatement(
                      "INSERT INTO sale_buyers (id, name, address, contact) VALUES (?, ?, ?, ?)")) {
                insert.setObject(1, id);
                insert.setString(2, buyer.name().strip());
                insert.setArray(3, connection.createArrayOf("text", buyer.address().toArray()));
                insert.setString(4, buyer.contact());
                insert.executeUpdate();
              }
            });
    return id;
  }

  /** Empty if there is none, or the buyer was removed. */
  public Optional<SellAway.Buyer> buyer(UUID id) {
    if (id == null) {
      return Optional.empty();
    }
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT name, array_to_string(address, chr(10)), contact FROM sale_buyers"
                    + " WHERE id = :id AND name IS NOT NULL")
            .setParameter("id", id)
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(
            c ->
                new SellAway.Buyer(
                    (String) c[0],
                    Arrays.stream(((String) c[1]).split("\n")).filter(l -> !l.isBlank()).toList(),
                    (String) c[2]))
        .findFirst();
  }

  /** Removes a buyer's name and address; the sales stay. */
  public void forget(UUID buyer) {
    entities
        .createNativeQuery(
            "UPDATE sale_buyers SET name = NULL, address = '{}', contact = NULL WHERE id = :id")
        .setParameter("id", buyer)
        .executeUpdate();
  }

  /** Gives a sale the next number of a year; others wait until this transaction ends. */
  public PaperNumber number(UUID sale, LocalDate on) {
    Number number =
        (Number)
            entities
                .createNativeQuery(
                    "INSERT INTO sale_paper_numbers AS n (year, last) VALUES (:year, 1)"
                        + " ON CONFLICT (year) DO UPDATE SET last = n.last + 1 RETURNING last")
                .setParameter("year", on.getYear())
                .getSingleResult();
    entities
        .createNativeQuery(
            "INSERT INTO sale_papers (sale, year, number, issued_on)"
                + " VALUES (:sale, :year, :number, :on)")
        .setParameter("sale", sale)
        .setParameter("year", on.getYear())
        .setParameter("number", number.intValue())
        .setParameter("on", on)
        .executeUpdate();
    return new PaperNumber(on.getYear(), number.intValue(), on);
  }

  public Optional<PaperNumber> number(UUID sale) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT year, number, CAST(issued_on AS text) FROM sale_papers WHERE sale = :sale")
            .setParameter("sale", sale)
            .getResultList();
    return rows.stream()
        .map(Object[].class::cast)
        .map(
            c ->
                new PaperNumber(
                    ((Number) c[0]).intValue(),
                    ((Number) c[1]).intValue(),
                    LocalDate.parse((String) c[2])))
        .findFirst();
  }
}
