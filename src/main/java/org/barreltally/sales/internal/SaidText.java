package org.barreltally.sales.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.UUID;
import org.barreltally.pricing.Money;
import org.barreltally.sales.SaidSale;

/**
 * A sale in canonical form, for comparing two tellings: fields in a fixed order, nothing that is
 * empty, amounts with the decimals of their currency.
 */
public final class SaidText {

  private static final ObjectMapper PLAIN = new ObjectMapper();

  private SaidText() {}

  /**
   * @param buyer null if none was named
   */
  public static String of(SaidSale said, String place, String channel, UUID buyer) {
    ObjectNode node = PLAIN.createObjectNode();
    node.put("place", place).put("channel", channel).put("at", said.at().toString());
    ArrayNode lines = node.putArray("lines");
    for (SaidSale.Line line : said.lines()) {
      ObjectNode one = lines.addObject().put("container", line.container());
      if (line.lot() != null) {
        one.put("lot", line.lot());
      }
      if (line.grade() != null) {
        one.put("grade", line.grade().code());
      }
      one.put("count", line.count());
      money(one, "price", line.price());
    }
    if (Boolean.TRUE.equals(said.deal())) {
      node.put("deal", true);
    }
    if (said.paid() != null) {
      ObjectNode paid = node.putObject("paid");
      money(paid, "cash", said.paid().cash());
      money(paid, "card", said.paid().card());
      money(paid, "owing", said.paid().owing());
    }
    if (said.reason() != null) {
      node.put("reason", said.reason());
    }
    if (buyer != null) {
      node.put("buyer", buyer.toString());
    }
    try {
      return PLAIN.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a sale cannot be written", e);
    }
  }

  private static void money(ObjectNode node, String field, Money money) {
    if (money != null) {
      node.put(field, money.toString());
    }
  }
}
