package org.barreltally.gifts.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.barreltally.gifts.Content;
import org.barreltally.gifts.MakeBox;
import org.barreltally.gifts.Wrapping;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.RecordedBy;
import org.barreltally.pricing.Money;

/** Gift boxes and their weighings in the database. */
@ApplicationScoped
public class BoxRows {

  /** A box as it was told. */
  public record Kept(UUID id, MakeBox said) {}

  private record Recipe(List<Content> contents, Wrapping carton, Wrapping ribbon, Wrapping card) {}

  private static final String SELECT =
      "SELECT b.id, b.name, b.price, b.currency, CAST(b.recipe AS text) AS recipe FROM gift_boxes b"
          + " ";

  private final EntityManager entities;
  private final ObjectMapper json;
  private final Days days;
  private final Ids ids;
  private final RecordedBy recordedBy;

  BoxRows(EntityManager entities, ObjectMapper json, Days days, Ids ids, RecordedBy recordedBy) {
    this.entities = entities;
    this.json = json;
    this.days = days;
    this.ids = ids;
    this.recordedBy = recordedBy;
  }

  public UUID add(MakeBox said) {
    UUID id = ids.next();
    entities
        .createNativeQuery(
            "INSERT INTO gift_boxes (id, name, price, currency, recipe, recorded_at, recorded_by)"
                + " VALUES (:id, :name, :price, :currency, CAST(:recipe AS jsonb), :at, :by)")
        .setParameter("id", id)
        .setParameter("name", said.name().strip())
        .setParameter("price", said.price().amount())
        .setParameter("currency", said.price().currency())
        .setParameter(
            "recipe",
            written(new Recipe(said.contents(), said.carton(), said.ribbon(), said.card())))
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
    return id;
  }

  public void weigh(UUID box, LocalDate on, double grams) {
    entities
        .createNativeQuery(
            "INSERT INTO gift_box_weighings (id, box, weighed_on, grams, recorded_at, recorded_by)"
                + " VALUES (:id, :box, :on, :grams, :at, :by)")
        .setParameter("id", ids.next())
        .setParameter("box", box)
        .setParameter("on", on)
        .setParameter("grams", BigDecimal.valueOf(grams))
        .setParameter("at", days.now())
        .setParameter("by", recordedBy.user())
        .executeUpdate();
  }

  /** Grams of each box weighed, by box. */
  public Map<UUID, List<Double>> weighings(Collection<UUID> boxes) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT box, grams FROM gift_box_weighings WHERE box IN (:boxes) ORDER BY id")
            .setParameter("boxes", boxes)
            .getResultList();
    Map<UUID, List<Double>> byBox = new HashMap<>();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      byBox
          .computeIfAbsent((UUID) c[0], box -> new ArrayList<>())
          .add(((BigDecimal) c[1]).doubleValue());
    }
    return byBox;
  }

  public List<Kept> byId(Collection<UUID> ids) {
    return ids.isEmpty() ? List.of() : read("WHERE b.id IN (:ids)", Map.of("ids", ids), 0);
  }

  /** The newest box of that name, in any case of letters. */
  public Optional<Kept> newestNamed(String name) {
    return read(
            "WHERE lower(b.name) = lower(:name) ORDER BY b.id DESC",
            Map.of("name", name.strip()),
            1)
        .stream()
        .findFirst();
  }

  /** In the order they were made, after one of them (or null), at most so many. */
  public List<Kept> list(UUID after, int limit) {
    return after == null
        ? read("ORDER BY b.id", Map.of(), limit)
        : read("WHERE b.id > :after ORDER BY b.id", Map.of("after", after), limit);
  }

  private List<Kept> read(String where, Map<String, Object> parameters, int limit) {
    Query query = entities.createNativeQuery(SELECT + where, Tuple.class);
    parameters.forEach(query::setParameter);
    if (limit > 0) {
      query.setMaxResults(limit);
    }
    List<?> rows = query.getResultList();
    return rows.stream().map(row -> kept((Tuple) row)).toList();
  }

  private Kept kept(Tuple row) {
    try {
      Recipe recipe = json.readValue(row.get("recipe", String.class), Recipe.class);
      return new Kept(
          row.get("id", UUID.class),
          new MakeBox(
              row.get("name", String.class),
              Money.rounded(row.get("price", BigDecimal.class), row.get("currency", String.class)),
              recipe.contents(),
              recipe.carton(),
              recipe.ribbon(),
              recipe.card()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a gift box cannot be read", e);
    }
  }

  private String written(Recipe recipe) {
    try {
      return json.writeValueAsString(recipe);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a gift box cannot be written", e);
    }
  }
}
