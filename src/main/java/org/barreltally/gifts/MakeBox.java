package org.barreltally.gifts;

import java.util.List;
import org.barreltally.pricing.Money;

/**
 * A gift box as it is told.
 *
 * @param carton null where nobody said
 * @param ribbon null for none
 * @param card a card that goes with every box; null for none
 */
public record MakeBox(
    String name,
    Money price,
    List<Content> contents,
    Wrapping carton,
    Wrapping ribbon,
    Wrapping card) {}
