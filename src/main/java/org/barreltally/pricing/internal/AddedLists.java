package org.barreltally.pricing.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.PriceList;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.Standing;

/** Adds price lists and what becomes of them to the book. */
@ApplicationScoped
public class AddedLists {

  private static final String ADD_LIST =
      """
      INSERT INTO price_lists (id, name, audience, valid_from, valid_to, currency, tax_included,
        family, version, replaces, recorded_at, recorded_by)
      VALUES (:id, :name, :audience, :from, CAST(:to AS date), :currency, :included, :family,
        :version, CAST(:replaces AS uuid), :at, :by)
      """;

  private static final String ADD_LINES =
      """
      INSERT INTO price_lines (list, line, container, grade, product_class, amount)
      SELECT :list, r.line, r.container, r.grade, r."productClass", r.amount
      FROM jsonb_to_recordset(CAST(:rows AS jsonb))
        AS r(line integer, container text, grade text, "productClass" text, amount numeric)
      """;

  private static final String ADD_DEALS =
      """
      INSERT INTO price_deals (list, line, container, grade, pieces, amount)
      SELECT :list, r.line, r.container, r.grade, r.pieces, r.amount
      FROM jsonb_to_recordset(CAST(:rows AS jsonb))
        AS r(line integer, container text, grade text, pieces integer, amount numeric)
      """;

  private static final String WITHDRAW =
      """
      INSERT INTO price_list_withdrawals (list, withdrawn_on, reason, recorded_at, recorded_by)
      VALUES (:list, :on, :reason, :at, :by) ON CONFLICT (list) DO NOTHING
      """;

  /** A line or deal as it is written; null fields are left out. */
  private record Row(
      int line,
      String container,
      ColorClass grade,
      ProductClass productClass,
      Integer pieces,
      BigDecimal amount) {}

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final RecordedBy recordedBy;

  AddedLists(EntityManager entities, ObjectMapper json, Days days, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.recordedBy = recordedBy;
  }

  /** Adds a list with its lines and deals. */
  public void add(PriceList list) {
    entities
        .createNativeQuery(ADD_LIST)
        .setParameter("id", list.id())
        .setParameter("name", list.name())
        .setParameter("audience", list.audience().code())
        .setParameter("from", list.validFrom())
        .setParameter("to", list.validTo())
        .setParameter("currency", list.currency())
        .setParameter("included", list.taxIncluded())
        .setParameter("family", list.family())
        .setParameter("version", list.version())
        .setParameter("replaces", list.replaces())
        .setParameter("at", list.recordedAt())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    List<Row> lines = new ArrayList<>();
    for (PriceLine line : list.lines()) {
      lines.add(
          new Row(
              lines.size(),
              line.container(),
              line.grade(),
              line.productClass(),
              null,
              line.price().amount()));
    }
    addAll(ADD_LINES, list.id(), lines);
    List<Row> deals = new ArrayList<>();
    for (Deal deal : list.deals()) {
      deals.add(
          new Row(
              deals.size(),
              deal.container(),
              deal.grade(),
              null,
              deal.count(),
              deal.price().amount()));
    }
    addAll(ADD_DEALS, list.id(), deals);
  }

  private void addAll(String insert, UUID list, List<Row> rows) {
    try {
      entities
          .createNativeQuery(insert)
          .setParameter("list", list)
          .setParameter("rows", json.writeValueAsString(rows))
          .executeUpdate();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a price list cannot be written", e);
    }
  }

  /** Withdraws a list; false if it was withdrawn before. */
  public boolean withdraw(UUID list, Standing.Withdrawn said) {
    return entities
            .createNativeQuery(WITHDRAW)
            .setParameter("list", list)
            .setParameter("on", said.from())
            .setParameter("reason", said.reason())
            .setParameter("at", days.now())
            .setParameter("by", recordedBy.user())
            .executeUpdate()
        == 1;
  }
}
