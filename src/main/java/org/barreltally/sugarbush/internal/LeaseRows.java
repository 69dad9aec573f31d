package org.barreltally.sugarbush.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.ContainerCharge;
import org.barreltally.sugarbush.Landowner;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.LeaseTerms;
import org.barreltally.sugarbush.Leases;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.sugarbush.TapKind;

/** Leases, their terms, taps, closings and what went on. */
@ApplicationScoped
public class LeaseRows {

  private static final String SELECT =
      """
      SELECT l.id, o.id AS landowner, o.name, o.address, l.bush, l.season, c.on_day AS closed_on,
        t.basis, t.governs, t.rate_per_tap, t.price, t.currency, t.price_list,
        CAST(t.container_charges AS text) AS charges
      FROM leases l JOIN landowners o ON o.id = l.landowner
        JOIN LATERAL (SELECT * FROM lease_terms t WHERE t.lease = l.id ORDER BY t.id DESC LIMIT 1) t
          ON true
        LEFT JOIN lease_closings c ON c.lease = l.id
      """;

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  LeaseRows(EntityManager entities, ObjectMapper json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public Optional<Lease> find(UUID id) {
    return read("WHERE l.id = :id", Map.of("id", id), 1).stream().findFirst();
  }

  public Optional<Lease> find(UUID landowner, String bush, int season) {
    return read(
            "WHERE l.landowner = :landowner AND l.bush = :bush AND l.season = :season",
            Map.of("landowner", landowner, "bush", bush, "season", season),
            1)
        .stream()
        .findFirst();
  }

  /** By season, the newest first, after a lease (or null), at most so many. */
  public List<Lease> list(Leases.Filter filter, UUID after, int limit) {
    StringBuilder where = new StringBuilder("WHERE true");
    Map<String, Object> parameters = new HashMap<>();
    if (filter.season() != null) {
      where.append(" AND l.season = :season");
      parameters.put("season", filter.season());
    }
    if (filter.landowner() != null) {
      where.append(" AND lower(o.name) = lower(:name)");
      parameters.put("name", filter.landowner());
    }
    if (filter.open() != null) {
      where.append(" AND (c.lease IS NULL) = :open");
      parameters.put("open", filter.open());
    }
    if (after != null) {
      where.append(
          " AND (l.season, l.id) < (SELECT a.season, a.id FROM leases a WHERE a.id = :after)");
      parameters.put("after", after);
    }
    return read(where + " ORDER BY l.season DESC, l.id DESC", parameters, limit);
  }

  public UUID add(UUID landowner, String bush, int season) {
    UUID id = ids.next();
    recorded(
            "INSERT INTO leases (id, landowner, bush, season, recorded_at, recorded_by)"
                + " VALUES (:id, :landowner, :bush, :season, :at, :by)")
        .setParameter("id", id)
        .setParameter("landowner", landowner)
        .setParameter("bush", bush)
        .setParameter("season", season)
        .executeUpdate();
    return id;
  }

  public void agree(UUID lease, LeaseTerms terms) {
    recorded(
            "INSERT INTO lease_terms (id, lease, basis, governs, rate_per_tap, price, currency,"
                + " price_list, container_charges, recorded_at, recorded_by) VALUES (:id, :lease,"
                + " :basis, :governs, :rate, CAST(:price AS numeric), :currency,"
                + " CAST(:list AS uuid), CAST(:charges AS jsonb), :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("lease", lease)
        .setParameter("basis", terms.basis().code())
        .setParameter("governs", terms.governs().code())
        .setParameter("rate", terms.ratePerTap().amount())
        .setParameter("price", terms.price() == null ? null : terms.price().amount().toString())
        .setParameter("currency", terms.ratePerTap().currency())
        .setParameter("list", terms.priceList() == null ? null : terms.priceList().toString())
        .setParameter("charges", written(terms.containerCharges()))
        .executeUpdate();
  }

  public void count(UUID lease, TapCount count) {
    recorded(
            "INSERT INTO lease_taps (id, lease, kind, from_day, taps, note, recorded_at,"
                + " recorded_by) VALUES (:id, :lease, :kind, :from, :taps, CAST(:note AS text),"
                + " :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("lease", lease)
        .setParameter("kind", count.kind().code())
        .setParameter("from", count.from())
        .setParameter("taps", count.count())
        .setParameter("note", count.note())
        .executeUpdate();
  }

  private Query recorded(String sql) {
    return entities
        .createNativeQuery(sql)
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user());
  }

  private List<Lease> read(String condition, Map<String, Object> parameters, int limit) {
    Query query = entities.createNativeQuery(SELECT + condition, Tuple.class).setMaxResults(limit);
    parameters.forEach(query::setParameter);
    List<Tuple> rows = new ArrayList<>();
    query.getResultList().forEach(row -> rows.add((Tuple) row));
    Map<UUID, List<TapCount>> taps =
        rows.isEmpty() ? Map.of() : taps(rows.stream().map(r -> r.get("id", UUID.class)).toList());
    return rows.stream().map(row -> lease(row, taps)).toList();
  }

  private Map<UUID, List<TapCount>> taps(List<UUID> leases) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT t.lease, t.kind, t.from_day, t.taps, t.note FROM lease_taps t"
                    + " WHERE t.lease IN (:leases) ORDER BY t.from_day, t.id",
                Tuple.class)
            .setParameter("leases", leases)
            .getResultList();
    Map<UUID, List<TapCount>> taps = new HashMap<>();
    for (Object each : rows) {
      Tuple row = (Tuple) each;
      taps.computeIfAbsent(row.get("lease", UUID.class), id -> new ArrayList<>())
          .add(
              new TapCount(
                  row.get("from_day", LocalDate.class),
                  row.get("taps", Integer.class),
                  TapKind.of(row.get("kind", String.class)),
                  row.get("note", String.class)));
    }
    return taps;
  }

  private Lease lease(Tuple row, Map<UUID, List<TapCount>> taps) {
    String currency = row.get("currency", String.class);
    BigDecimal price = row.get("price", BigDecimal.class);
    UUID id = row.get("id", UUID.class);
    return new Lease(
        id,
        new Landowner(
            row.get("landowner", UUID.class),
            row.get("name", String.class),
            row.get("address", String.class)),
        row.get("bush", String.class),
        row.get("season", Integer.class),
        new LeaseTerms(
            Basis.of(row.get("basis", String.class)),
            TapKind.of(row.get("governs", String.class)),
            Money.rounded(row.get("rate_per_tap", BigDecimal.class), currency),
            price == null ? null : Money.rounded(price, currency),
            row.get("price_list", UUID.class),
            charges(row.get("charges", String.class))),
        taps.getOrDefault(id, List.of()),
        row.get("closed_on", LocalDate.class));
  }

  private String written(List<ContainerCharge> charges) {
    try {
      return json.writeValueAsString(charges);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("charges of a lease cannot be written", e);
    }
  }

  private List<ContainerCharge> charges(String text) {
    try {
      return json.readValue(text, new TypeReference<>() {});
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("charges of a lease cannot be read", e);
    }
  }
}
