package org.barreltally.gifts;

import java.time.LocalDate;
import org.barreltally.pricing.Money;

/**
 * What is said of one recipient of a gift order.
 *
 * @param address may be null unless it goes by post
 * @param box id of a gift box, or its name for the newest of that name
 * @param count boxes; one if null
 * @param card text of the greeting card; null for none
 * @param delivery by post if null
 * @param postage that the buyer pays for one mailing; none if null
 * @param wantedBy the day it should be there; null where {@code sendBy} says enough
 * @param sendBy the day it should leave; worked back from {@code wantedBy} if null
 * @param carrier by whose table that is worked back; null where there is but one
 */
public record Recipient(
    String name,
    Address address,
    String box,
    Integer count,
    String card,
    Delivery delivery,
    Money postage,
    LocalDate wantedBy,
    LocalDate sendBy,
    String carrier) {}
