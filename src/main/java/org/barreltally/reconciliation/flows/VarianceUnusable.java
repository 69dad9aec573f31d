package org.barreltally.reconciliation.flows;

import org.barreltally.refusal.Refusal;

/** A measured flow has a variance that is missing, zero, below zero or beyond any measure. */
public final class VarianceUnusable extends Refusal {
  public VarianceUnusable(String flow, Double variance, String field) {
    super(
        Kind.INVALID,
        "variance-unusable",
        "A variance cannot be used",
        "The variance of %s is %s. Give the square of the standard uncertainty, above zero; nothing is measured exactly."
            .formatted(shown(flow), variance == null ? "missing" : variance),
        field);
  }
}
