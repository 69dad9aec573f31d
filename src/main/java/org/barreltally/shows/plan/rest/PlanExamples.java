package org.barreltally.shows.plan.rest;

/** A plan asked for and answered, of an invented fair. */
final class PlanExamples {

  static final String QUESTION =
      """
      {"costs": {"marginPercent": 55, "runningOut": {"amount": 1.00, "currency": "USD"},
                 "cartingBack": {"amount": 0.60, "currency": "USD"}},
       "visitors": 2400, "vehicleLoad": {"value": 900, "unit": "lb"},
       "otherLoad": {"value": 250, "unit": "lb"}, "displayPercent": 15, "refills": 1,
       "jarsPer100Visitors": 3,
       "firstGuess": [{"container": "HP", "grade": "golden", "per100Visitors": 0.5}],
       "footprints": [{"container": "PT", "widthInches": 3.6, "depthInches": 3.6}],
       "only": [{"container": "PT"}, {"container": "HP", "grade": "golden"}]}
      """;

  static final String ANSWER = "{}";

  private PlanExamples() {}
}
