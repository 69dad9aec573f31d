package org.barreltally.sales.away;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.barreltally.sales.SaidSale;

/**
 * A sale away from shows.
 *
 * @param channel {@code farm, post, wholesale}
 * @param buyer null where nobody asked for the name
 * @param lines a line without lot takes the oldest lots first
 * @param deal whether the deals of the price list are given; null for no
 * @param paid null if nothing was said of it
 * @param at when; null for now
 * @param place the room the jars leave; null for the cool room
 * @param priceList null for the list that holds for the channel on the day
 * @param taxPlace the town or region whose tax holds; null for none
 */
public record SellAway(
    String channel,
    Buyer buyer,
    List<SaidSale.Line> lines,
    Boolean deal,
    SaidSale.Paid paid,
    Instant at,
    String place,
    UUID priceList,
    String taxPlace) {

  /** Who bought it; kept where it can be removed. */
  public record Buyer(
      String name, @JsonSetter(contentNulls = Nulls.FAIL) List<String> address, String contact) {
    public Buyer {
      address = address == null ? List.of() : List.copyOf(address);
    }
  }
}
