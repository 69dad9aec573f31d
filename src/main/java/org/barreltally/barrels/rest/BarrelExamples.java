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

  private BarrelExamples() {}
}
