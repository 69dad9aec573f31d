package org.barreltally.gifts.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.gifts.Address;
import org.barreltally.gifts.Buyer;
import org.barreltally.gifts.OrderHead;
import org.barreltally.gifts.Person;

/** Names, addresses and card texts: the one place where gift orders know people. */
@ApplicationScoped
public class PeopleRows {

  private final EntityManager entities;
  private final ObjectMapper json;

  PeopleRows(EntityManager entities, ObjectMapper json) {
    this.entities = entities;
    this.json = json;
  }

  /** Buyers by their ids; all null once removed. */
  public Map<UUID, Buyer> buyers(Collection<UUID> ids) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT id, CAST(details AS text) FROM gift_buyers WHERE id IN (:ids)")
            .setParameter("ids", ids)
            .getResultList();
    Map<UUID, Buyer> buyers = new HashMap<>();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      buyers.put(
          (UUID) c[0],
          c[1] == null
              ? new Buyer(null, null, null, null, null)
              : read((String) c[1], Buyer.class));
    }
    return buyers;
  }

  /** Recipients by order and number; nothing of an order that has none. */
  public Map<UUID, Map<Integer, Person>> of(Collection<UUID> orders) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT order_id, n, name, CAST(address AS text), card FROM gift_addresses"
                    + " WHERE order_id IN (:ids)")
            .setParameter("ids", orders)
            .getResultList();
    Map<UUID, Map<Integer, Person>> people = new HashMap<>();
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      Address address = c[3] == null ? null : read((String) c[3], Address.class);
      people
          .computeIfAbsent((UUID) c[0], order -> new HashMap<>())
          .put((Integer) c[1], new Person((String) c[2], address, (String) c[4]));
    }
    return people;
  }

  /** Writes a recipient anew. */
  public void correct(UUID order, int n, Person person) {
    entities
        .createNativeQuery(
            "UPDATE gift_addresses SET name = :name, address = CAST(:address AS jsonb), card ="
                + " :card WHERE order_id = :order AND n = :n")
        .setParameter("name", person.name())
        .setParameter("address", person.address() == null ? null : written(person.address()))
        .setParameter("card", person.card())
        .setParameter("order", order)
        .setParameter("n", n)
        .executeUpdate();
  }

  /** Removes everything that says who buyer and recipients are. */
  public void forget(OrderHead order) {
    entities
        .createNativeQuery(
            "UPDATE gift_addresses SET name = NULL, address = NULL, card = NULL"
                + " WHERE order_id = :order")
        .setParameter("order", order.id())
        .executeUpdate();
    entities
        .createNativeQuery("UPDATE gift_buyers SET name = NULL, details = NULL WHERE id = :id")
        .setParameter("id", order.buyer())
        .executeUpdate();
  }

  private <T> T read(String said, Class<T> type) {
    try {
      return json.readValue(said, type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a person cannot be read", e);
    }
  }

  private String written(Object said) {
    try {
      return json.writeValueAsString(said);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a person cannot be written", e);
    }
  }
}
