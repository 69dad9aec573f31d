package org.barreltally.canning;

import org.barreltally.containers.Container;
import org.barreltally.refusal.Refusal;

/** Processing Grade syrup was to go into a container of less than 5 gallons. */
public final class ProcessingGradeTooSmall extends Refusal {

  /** The finished syrup is Processing Grade. */
  public ProcessingGradeTooSmall(Container container, String field) {
    super(
        Kind.RULE,
        "processing-grade-too-small",
        "Not in a container this small",
        say(container),
        field);
  }

  /** Processing Grade syrup of a barrel is drawn into the run. */
  public ProcessingGradeTooSmall(Container container, String barrel, String field) {
    super(
        Kind.RULE,
        "processing-grade-too-small",
        "Not in a container this small",
        barrel + " holds Processing Grade. " + say(container),
        field);
  }

  static String say(Container container) {
    return "Processing Grade goes only into containers of 5 gal or more and is never sold retail (USDA AMS grade standards); %s holds %s. Leave it out, or grade the syrup again if the tasting was wrong."
        .formatted(container.code(), container.netContents());
  }
}
