package org.barreltally.sugarbush;

import org.barreltally.pricing.Money;

/** What a container itself counts for, each. */
public record ContainerCharge(String container, Money charge) {}
