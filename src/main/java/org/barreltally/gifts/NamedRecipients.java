package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.lots.NamedHolders;

/** To whom boxes with jars of lots were sent, by name. */
@ApplicationScoped
class NamedRecipients implements NamedHolders {

  private static final String SENT =
      """
      SELECT a.name, (SELECT string_agg(line, E'\\n') FROM jsonb_array_elements_text(a.address -> 'lines') line),
        concat_ws(' ', a.address ->> 'town', a.address ->> 'region', a.address ->> 'postcode'),
        a.address ->> 'country', i.lot, i.container, sum(j.pieces)
      FROM gift_jars j JOIN items i ON i.id = j.item
        JOIN gift_addresses a ON a.order_id = j.order_id AND a.n = j.n
      WHERE i.lot = ANY (?::text[]) AND j.stage = 'sent' AND a.name <> ''
      GROUP BY j.order_id, j.n, a.name, a.address, i.lot, i.container
      HAVING sum(j.pieces) > 0 ORDER BY a.name, i.lot, i.container
      """;

  private final EntityManager entities;

  NamedRecipients(EntityManager entities) {
    this.entities = entities;
  }

  @Override
  @Transactional
  public List<Holding> of(Collection<String> lots) {
    List<Holding> holdings = new ArrayList<>();
    new Bundle()
        .ask(
            SENT,
            row ->
                holdings.add(
                    new Holding(
                        "gift",
                        row.getString(1),
                        address(row.getString(2), row.getString(3), row.getString(4)),
                        null,
                        PlaceCode.CUSTOMER,
                        row.getString(5),
                        row.getString(6),
                        row.getLong(7),
                        true,
                        true)),
            Column.of("text", lots))
        .send(entities);
    return holdings;
  }

  private static List<String> address(String lines, String town, String country) {
    return Stream.concat(lines == null ? Stream.empty() : lines.lines(), Stream.of(town, country))
        .filter(line -> line != null && !line.isBlank())
        .toList();
  }
}
