package org.barreltally.pricing;

import org.barreltally.containers.Container;
import org.barreltally.refusal.Refusal;

/**
 * Processing Grade has a price where it is not sold: never at retail, and only in containers of 5
 * gallons or more (USDA AMS grade standards).
 */
public final class ProcessingGradeOffered extends Refusal {
  public ProcessingGradeOffered(Container container, Audience audience, String field) {
    super(
        Kind.RULE,
        "processing-grade-offered",
        "Processing Grade is not sold like this",
        "Processing Grade is not sold at retail and only in containers of 5 gal or more; this is a %s list and %s holds %s. Take the line out."
            .formatted(audience.code(), container.code(), container.netContents()),
        field);
  }
}
