package org.barreltally.netcontents.rest;

/** Invented checks for the description of the interface. */
final class CheckExamples {

  static final String ASKED =
      """
      {"container": "PT", "lotSize": 160, "netWeights": [625.16, 628.33, 626.08, 629.96, 624.45,
        627.41, 626.59, 628.84, 625.78, 627.0, 624.04, 629.16], "regime": "us"}
      """;

  static final String ANSWERED =
      """
      {"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "lot": "P260620-1", "container": "PT",
       "regime": "us", "lotSize": 160, "sampleSize": 12, "nominal": {"value": 1, "unit": "pt"},
       "nominalWeight": {"value": 628.0, "unit": "g"}, "mean": {"value": 626.9, "unit": "g"},
       "standardDeviation": {"value": 1.9, "unit": "g"}, "factor": 0.635,
       "averageMargin": {"value": 0.09, "unit": "g"}, "average": "pass",
       "shortest": {"value": 624.04, "unit": "g"}, "beyondToleranceAllowed": 0,
       "individual": "not-checked",
       "individualWords": "Single jars were not checked: the allowed variation for this size was not entered.",
       "weighing": {"standardUncertainty": {"value": 0.58, "unit": "g"}, "averageWithin": true},
       "suggestHold": false,
       "cautions": ["This check helps your records. The weights-and-measures office decides."],
       "netWeights": [625.16, 628.33, 626.08, 629.96, 624.45, 627.41, 626.59, 628.84, 625.78,
         627.0, 624.04, 629.16],
       "checkedAt": "2026-06-21T13:05:00Z"}
      """;

  static final String LISTED = "{\"items\": [" + ANSWERED + "]}";

  private CheckExamples() {}
}
