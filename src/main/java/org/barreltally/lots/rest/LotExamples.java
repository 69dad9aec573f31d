package org.barreltally.lots.rest;

/** Answers shown in the description of the interface; all invented. */
final class LotExamples {

  static final String LOT =
      """
      {"lot": "P260620-1", "kind": "packed", "madeOn": "2026-06-20", "seasons": [2026],
       "brix": 66.900, "grade": "amber", "transmittance": 57.0, "taste": "clean", "held": false,
       "awards": [{"show": "Fernby Harvest Fair", "on": "2026-10-04", "class": "Amber, single jug",
                   "container": "PT", "score": 97.5, "ribbon": "Blue ribbon",
                   "words": "Blue ribbon, Amber, single jug, Fernby Harvest Fair 2026"}]}
      """;

  static final String LOTS =
      """
      {"items": [
        {"lot": "S26-001", "kind": "bulk", "madeOn": "2026-03-14", "seasons": [2026],
         "brix": 66.900, "grade": "amber", "transmittance": 62.0, "taste": "clean",
         "held": false}],
       "next": "MTpTMjYtMDAx"}
      """;

  static final String TRACE =
      """
      {"lot": "P260702-1",
       "parents": [
         {"lot": "S26-004", "weight": {"value": 208.00, "unit": "lb"}, "share": 0.914688,
          "seasons": [2026]},
         {"lot": "P260620-1", "weight": {"value": 19.40, "unit": "lb"}, "share": 0.085312,
          "seasons": [2025, 2026]}],
       "children": [],
       "ancestors": [
         {"lot": "S26-004", "share": 0.914688}, {"lot": "P260620-1", "share": 0.085312},
         {"lot": "S25-011", "share": 0.013846}, {"lot": "S26-001", "share": 0.071466}],
       "descendants": [],
       "whereabouts": [
         {"lot": "P260702-1", "place": "cool-room", "container": "PT", "count": 97,
          "certainty": "exact"},
         {"lot": "P260702-1", "recipient": "customer", "container": "PT", "count": 60,
          "certainty": "exact"},
         {"lot": "P260702-1", "place": "broken", "container": "PT", "count": 3,
          "certainty": "exact"}],
       "syrup": [], "accounted": 160, "total": 160}
      """;

  private LotExamples() {}
}
