package org.barreltally.shows.plan.rest;

/** A plan asked for and answered: pints for the first time at an invented fair. */
final class PlanExamples {

  static final String QUESTION =
      """
      {"costs": {"marginPercent": 55, "runningOut": {"amount": 1.00, "currency": "USD"},
                 "cartingBack": {"amount": 0.60, "currency": "USD"}},
       "visitors": 2400, "vehicleLoad": {"value": 900, "unit": "lb"},
       "otherLoad": {"value": 250, "unit": "lb"}, "displayPercent": 15, "refills": 1,
       "jarsPer100Visitors": 3,
       "firstGuess": [{"container": "PT", "grade": "amber", "per100Visitors": 1.25}],
       "footprints": [{"container": "PT", "widthInches": 3.6, "depthInches": 3.6}],
       "only": [{"container": "PT", "grade": "amber"}]}
      """;

  static final String ANSWER =
      """
      {"show": "01a0c0de-7000-7000-8000-000000000001", "items": [
        {"container": "PT", "grade": "amber", "take": 48, "wanted": 72, "available": 48,
         "expected": 30.0, "low": 6, "high": 61, "enough": 0.82, "facings": 12,
         "mass": {"value": 32.6, "unit": "kg"}, "limitedBy": "promise",
         "why": "Never at a show; your first guess by the visitors expected; expect about 30 (6 to 61). One too few costs 15 times one carted back, so 72 would be right, but only 48 can be promised."}],
       "load": {"value": 146.0, "unit": "kg"}, "carries": {"value": 900, "unit": "lb"},
       "shelfInches": 288.0, "shelfInchesForJars": 244.8, "shelfInchesTaken": 43.2,
       "expectedTakings": {"amount": 391.60, "currency": "USD"},
       "assumptions": ["What PT weighs empty is guessed: give emptyWeight."],
       "cautions": ["Stay within what the vehicle's plate and tyres allow, people and kit included; heavy boxes low and tied down. The plate decides, not this sheet."]}
      """;

  private PlanExamples() {}
}
