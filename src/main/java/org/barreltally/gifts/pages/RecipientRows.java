package org.barreltally.gifts.pages;

import jakarta.inject.Inject;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import org.barreltally.containers.Containers;
import org.barreltally.gifts.GiftBox;
import org.barreltally.gifts.rest.GiftBoxesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;

/** The rows in which recipients are typed. */
@jakarta.enterprise.context.ApplicationScoped
class RecipientRows {

  /** Rows that a form begins with, and that more are asked for at once. */
  static final int ROWS = 3;

  private static final List<String> ADDRESS =
      List.of("lines[0]", "lines[1]", "town", "region", "postcode");

  /**
   * What a form of recipients offers.
   *
   * @param boxes by name, the newest of each
   */
  public record Offer(List<Choice> boxes, GiftChoices choices) {}

  private final GiftBoxesApi boxes;
  private final Containers containers;
  private final PageFarm farm;

  @Inject
  RecipientRows(GiftBoxesApi boxes, Containers containers, PageFarm farm) {
    this.boxes = boxes;
    this.containers = containers;
    this.farm = farm;
  }

  Offer offer() {
    return new Offer(
        WholeList.of(boxes::list).stream()
            .map(GiftBox::name)
            .distinct()
            .sorted()
            .map(name -> new Choice(name, name))
            .toList(),
        GiftChoices.of(containers, farm));
  }

  /** Puts the country that was said for all into the addresses that name none. */
  static void addCountry(MultivaluedMap<String, String> said) {
    String country = said.getFirst("country");
    if (country == null || country.isBlank()) {
      return;
    }
    for (String row : rows(said)) {
      String own = said.getFirst(row + "country");
      boolean some =
          ADDRESS.stream().map(part -> said.getFirst(row + part)).anyMatch(RecipientRows::isSaid);
      if (some && !isSaid(own)) {
        said.putSingle(row + "country", country);
      }
    }
  }

  private static List<String> rows(MultivaluedMap<String, String> said) {
    return said.keySet().stream()
        .filter(field -> field.matches("recipients\\[\\d{1,4}]\\.address\\.town"))
        .map(field -> field.substring(0, field.length() - "town".length()))
        .toList();
  }

  private static boolean isSaid(String text) {
    return text != null && !text.isBlank();
  }
}
