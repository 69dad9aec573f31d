package org.barreltally.reconciliation.flows;

/**
 * What goes from one node to another.
 *
 * @param from null if it comes from outside the network
 * @param to null if it leaves the network
 * @param measured in any unit, the same for all flows; null if nobody measured it
 * @param variance the square of the standard uncertainty of what was measured; null if nothing was
 */
public record Flow(String name, String from, String to, Double measured, Double variance) {

  /** A flow nobody measured. */
  public static Flow unmeasured(String name, String from, String to) {
    return new Flow(name, from, to, null, null);
  }

  /** A measured flow, with its standard uncertainty. */
  public static Flow measured(String name, String from, String to, double value, double u) {
    return new Flow(name, from, to, value, u * u);
  }

  public boolean isMeasured() {
    return measured != null;
  }
}
