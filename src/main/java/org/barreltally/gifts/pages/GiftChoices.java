package org.barreltally.gifts.pages;

import java.util.List;
import org.barreltally.containers.Containers;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.Payer;
import org.barreltally.measure.ColorClass;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.PageFarm;

/** What the forms of gift boxes and orders offer. */
public record GiftChoices(
    List<Choice> sizes,
    List<Choice> grades,
    List<Choice> deliveries,
    List<Choice> payers,
    String currency) {

  private static final int SIZES_MAX = 500;

  static GiftChoices of(Containers containers, PageFarm farm) {
    return new GiftChoices(
        containers.list(null, SIZES_MAX).stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList(),
        Choice.of(ColorClass.values(), "common.grade").stream()
            .filter(grade -> !grade.code().equals(ColorClass.PROCESSING.code()))
            .toList(),
        Choice.of(Delivery.values(), "gifts.delivery"),
        Choice.of(Payer.values(), "gifts.payer"),
        farm.currency());
  }
}
