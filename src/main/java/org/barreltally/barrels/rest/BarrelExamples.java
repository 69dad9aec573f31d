package org.barreltally.barrels.rest;

/** Bodies shown in the description of the interface; all invented. */
final class BarrelExamples {

  static final String WEIGHED_AND_DIPPED =
      """
      {"tag": "B-01", "season": 2026, "filledOn": "2026-03-14",
       "material": "stainless",
       "weighing": {"gross": {"value": 486.5, "unit": "lb"},
                    "tare": {"value": 42.0, "unit": "lb"}},
       "dipstick": {"volume": {"value": 41.3, "unit": "gal"},
                    "temperature": {"value": 185, "unit": "degF"}},
       "density": {"reading": {"value": 66.9, "unit": "Brix"},
                   "temperature": {"value": 68, "unit": "degF"},
                   "instrument": "refractometer",
                   "reference": {"value": 68, "unit": "degF"}},
       "transmittance": 62, "taste": "clean"}
      """;

  static final String WEIGHED_AGAIN =
      """
      {"on": "2026-06-12",
       "weighing": {"gross": {"value": 486.0, "unit": "lb"}}}
      """;

  static final String TOPPED_UP =
      """
      {"on": "2026-03-22",
       "weighing": {"gross": {"value": 486.0, "unit": "lb"}},
       "density": {"reading": {"value": 66.8, "unit": "Brix"},
                   "temperature": {"value": 68, "unit": "degF"},
                   "instrument": "refractometer"},
       "transmittance": 58, "taste": "clean",
       "reheat": {"temperature": {"value": 180, "unit": "degF"},
                  "by": "Orla"}}
      """;

  static final String SPOILED =
      """
      {"on": "2026-08-02", "all": true, "cause": "discarded",
       "reason": "Mould at the bung"}
      """;

  static final String DARKENED =
      """
      {"on": "2026-09-10", "transmittance": 48, "taste": "clean"}
      """;

  static final String HELD =
      """
      {"reason": "Smells sour at the bung; second taster on Friday"}
      """;

  static final String RELEASED =
      """
      {"reason": "Second taster found it clean"}
      """;

  static final String BARREL =
      """
      {"tag": "B-01", "lot": "S26-001", "season": 2026, "seasons": [2026], "state": "full",
       "held": false, "grade": "amber", "brix": 66.900,
       "mass": {"value": 201.774, "unit": "kg"},
       "massUncertainty": {"value": 0.185, "unit": "kg"},
       "netWeight": {"value": 444.50, "unit": "lb"},
       "volumeAt68F": {"value": 40.134, "unit": "gal"},
       "transmittance": 62.0, "taste": "clean", "material": "stainless",
       "filledOn": "2026-03-14", "place": "barrel-room", "withinDensityLimits": true,
       "nearGradeLine": false,
       "dipstickGap": {"volume": {"value": -0.023, "unit": "gal"}, "beyondUncertainty": false},
       "cautions": []}
      """;

  static final String HEEL =
      """
      {"tag": "H-01", "lot": "P260620-1", "season": 2026, "seasons": [2026], "state": "full",
       "held": false, "grade": "amber", "brix": 66.900,
       "mass": {"value": 8.806, "unit": "kg"},
       "massUncertainty": {"value": 0.185, "unit": "kg"},
       "netWeight": {"value": 19.40, "unit": "lb"},
       "volumeAt68F": {"value": 1.752, "unit": "gal"},
       "transmittance": 57.0, "taste": "clean", "material": "stainless",
       "filledOn": "2026-06-20", "place": "barrel-room", "withinDensityLimits": true,
       "nearGradeLine": false, "cautions": []}
      """;

  static final String PURCHASES =
      """
      {"items": [
        {"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "on": "2026-05-02", "lot": "S26-014",
         "supplier": "01980f3a-6a40-7c11-9a55-0b7e2f6d8a10", "name": "Fennimore Ash"}]}
      """;

  static final String BARRELS_BEGIN = "{\"items\": [";
  static final String MORE = "], \"next\": \"MTpCLTAx\"}";

  private BarrelExamples() {}
}
