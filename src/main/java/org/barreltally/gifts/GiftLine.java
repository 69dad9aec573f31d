package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * A recipient as ordered, and its state; names are not in it.
 *
 * @param count boxes
 * @param price of one box as it was ordered
 * @param postage for one mailing; null where none was said
 */
public record GiftLine(
    int n,
    UUID box,
    int count,
    Money price,
    Delivery delivery,
    Money postage,
    String carrier,
    LocalDate wantedBy,
    LocalDate sendBy,
    LocalDate latestSend,
    RecipientState state) {}
