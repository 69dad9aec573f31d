package org.barreltally.recall.rest;

/** Examples for the description of the interface, answered by a running program. */
final class RecallExamples {

  static final String RECALL =
      """
      {"id": "01a21467-88bc-7641-8f37-8d401a37746c", "lot": "S25-001", "reason": "Scorched \
      taste in two jars", "rehearsal": true, "state": "rehearsal", "startedAt": \
      "2026-11-25T20:30:59.260480Z", "madeOf": [], "touched": [{"lot": "S25-001", "share": \
      1.0, "held": false}, {"lot": "P250620-1", "share": 1.0, "held": false}, {"lot": \
      "P250702-1", "share": 0.087722, "held": false}], "onHand": [{"place": "cool-room", \
      "lot": "P250620-1", "container": "PT", "count": 103, "certainty": "exact"}, {"place": \
      "cool-room", "lot": "P250702-1", "container": "PT", "count": 120, "certainty": \
      "exact"}], "syrupOnHand": [], "gone": [], "holders": [{"number": 1, "name": "Ashdown \
      Larder", "address": ["1 Mill Row", "Tarn Bridge"], "channels": ["wholesale"], \
      "certainty": "exact", "lines": [{"lot": "P250702-1", "container": "PT", "count": 30, \
      "certainty": "exact"}]}, {"number": 2, "name": "Hesper Loomworks", "address": ["4 Weir \
      Lane", "Fernby"], "contact": "555-0100", "channels": ["post"], "certainty": "exact", \
      "lines": [{"lot": "P250620-1", "container": "PT", "count": 12, "certainty": \
      "exact"}]}], "publicRemainder": {"jars": 5, "possibleJars": 0, "lines": [{"account": \
      "customer", "container": "PT", "count": 5, "possible": 0}]}, "accounted": 270, \
      "total": 270, "cautions": ["Your food inspector and your state agency decide what a \
      recall takes and whom to tell.", "A jar that bulges or leaks can burst: do not open \
      it; wear gloves and cover your eyes."]}
      """;

  private RecallExamples() {}
}
