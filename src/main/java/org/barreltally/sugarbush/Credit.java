package org.barreltally.sugarbush;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What was left of a closed lease, for the next one: above zero owed to the landowner, below zero
 * handed over too much.
 *
 * @param mL millilitres at 20 °C; null where only money was reckoned
 */
public record Credit(UUID lease, int season, LocalDate on, Money money, BigDecimal mL) {}
