package org.barreltally.gifts;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.barreltally.pricing.Money;

/**
 * A gift box: what is in it and what it costs. It never changes; a newer one of the same name takes
 * its place for new orders.
 *
 * @param packedWeight of one box ready for the post
 */
public record GiftBox(
    UUID id,
    String name,
    Money price,
    List<Content> contents,
    Wrapping carton,
    Wrapping ribbon,
    Wrapping card,
    PackedWeight packedWeight) {

  public GiftBox {
    contents = List.copyOf(contents);
  }

  /** Jars in one box. */
  public long jars() {
    return contents.stream().mapToLong(Content::count).sum();
  }

  /** Carton, ribbon and card, as far as there are. */
  public List<Wrapping> wrappings() {
    return Stream.of(carton, ribbon, card).filter(Objects::nonNull).toList();
  }
}
