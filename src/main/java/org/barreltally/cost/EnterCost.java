package org.barreltally.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What is said of a cost.
 *
 * @param season or one of lot, run, container, supply, show: what it belongs to
 * @param amount or hours and rate
 * @param per of a container or supply: the amount is for so many; null for one
 */
public record EnterCost(
    LocalDate on,
    CostKind kind,
    Integer season,
    String lot,
    String run,
    String container,
    String supply,
    UUID show,
    Money amount,
    BigDecimal hours,
    Money rate,
    Integer per,
    String note) {}
