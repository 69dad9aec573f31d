package org.barreltally.lots.rest;

import java.util.List;
import java.util.Set;
import org.barreltally.lots.JarsTold;
import org.barreltally.lots.Trace;

/** The jars of a trace, place by place: what surely is there, and what may be. */
final class JarRows {

  /** The outside accounts that are people; all others are places of the book. */
  private static final Set<String> RECIPIENTS =
      Set.of("customer", "bulk-buyer", "landowner", "given");

  private JarRows() {}

  static List<TraceView.Jars> of(Trace trace) {
    return JarsTold.of(trace).stream().map(JarRows::row).toList();
  }

  private static TraceView.Jars row(JarsTold jars) {
    boolean person = RECIPIENTS.contains(jars.place());
    return new TraceView.Jars(
        jars.lot(),
        person ? null : jars.place(),
        person ? jars.place() : null,
        jars.container(),
        jars.count(),
        jars.exact() ? "exact" : "possible");
  }
}
