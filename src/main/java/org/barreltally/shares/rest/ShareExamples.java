package org.barreltally.shares.rest;

/** What the operations on shares are shown with. Names are invented. */
final class ShareExamples {

  static final String HAND_OVER =
      """
      {"on": "2026-06-28", "lines": [{"container": "GAL", "lot": "P260620-1", "count": 2},
                                     {"container": "HP", "lot": "P260620-1", "count": 16}]}
      """;

  static final String HANDED =
      """
      {"id": "01a0d0de-7000-7000-8000-000000000003", "lease": "01a0d0de-7000-7000-8000-000000000001",
       "on": "2026-06-28", "movement": "01a0d0de-7000-7000-8000-000000000004",
       "lines": [{"container": "HP", "grade": "amber", "lot": "P260620-1", "count": 16,
                  "mLEach": 236.5882365, "listPrice": {"amount": 9.00, "currency": "USD"}}]}
      """;

  static final String CLOSE =
      """
      {"on": "2026-12-31"}
      """;

  static final String STATEMENT =
      """
      {"lease": "01a0d0de-7000-7000-8000-000000000001", "landowner": "Odile Fernsby",
       "bush": "Upper Wend", "season": 2026, "basis": "volume", "governs": "set",
       "taps": [{"from": "2026-02-14", "count": 420, "kind": "set"}], "tapsCounted": 420,
       "ratePerTap": {"amount": 1.10, "currency": "USD"},
       "price": {"amount": 55.00, "currency": "USD"},
       "owed": {"amount": 462.00, "currency": "USD"}, "owedVolume": {"value": 8.4, "unit": "gal"},
       "carriedIn": [],
       "delivered": [{"delivery": "01a0d0de-7000-7000-8000-000000000003",
                      "movement": "01a0d0de-7000-7000-8000-000000000004", "on": "2026-06-28",
                      "container": "HP", "grade": "amber", "lot": "P260620-1", "count": 16,
                      "volume": {"value": 1, "unit": "gal"},
                      "value": {"amount": 55.00, "currency": "USD"},
                      "listPrice": {"amount": 9.00, "currency": "USD"},
                      "listValue": {"amount": 144.00, "currency": "USD"}}],
       "deliveredValue": {"amount": 55.00, "currency": "USD"},
       "deliveredVolume": {"value": 1, "unit": "gal"},
       "carried": {"amount": 407.00, "currency": "USD"},
       "carriedVolume": {"value": 7.4, "unit": "gal"},
       "deliveredListValue": {"amount": 144.00, "currency": "USD"}}
      """;

  private ShareExamples() {}
}
