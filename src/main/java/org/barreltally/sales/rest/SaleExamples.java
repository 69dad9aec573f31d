package org.barreltally.sales.rest;

/** What is sent and answered about sales; all invented. */
public final class SaleExamples {

  public static final String TOLD =
      """
      [{"id": "01a0c101-2222-7000-8000-000000000001", "at": "2026-10-03T14:05:00Z",
        "lines": [{"container": "PT", "count": 2}, {"container": "HP", "lot": "P260725-1", "count": 1}],
        "deal": true, "paid": {"cash": {"amount": 40.00, "currency": "USD"}}}]
      """;

  public static final String MERGED =
      """
      {"items": [{"id": "01a0c101-2222-7000-8000-000000000001", "result": "kept",
        "place": "fernby-harvest-fair-2026", "channel": "table", "at": "2026-10-03T14:05:00Z",
        "bookedAt": "2026-10-03T14:05:00Z",
        "lines": [{"container": "PT", "grade": "amber", "count": 2,
                   "price": {"amount": 15.00, "currency": "USD"},
                   "amount": {"amount": 28.00, "currency": "USD"}},
                  {"container": "HP", "lot": "P260725-1", "grade": "dark", "count": 1,
                   "price": {"amount": 9.00, "currency": "USD"},
                   "amount": {"amount": 9.00, "currency": "USD"}}],
        "total": {"amount": 37.00, "currency": "USD"},
        "dealSaving": {"amount": 2.00, "currency": "USD"},
        "tax": {"amount": 0.00, "currency": "USD"},
        "paid": {"cash": {"amount": 40.00, "currency": "USD"}},
        "changeDue": {"amount": 3.00, "currency": "USD"},
        "movement": "01a0c101-2222-7000-8000-00000000000a", "undone": false, "notes": []}]}
      """;

  public static final String SALE =
      """
      {"id": "01a0c101-2222-7000-8000-000000000001", "place": "fernby-harvest-fair-2026",
       "channel": "table", "at": "2026-10-03T14:05:00Z", "bookedAt": "2026-10-03T14:05:00Z",
       "lines": [{"container": "PT", "grade": "amber", "count": 1,
                  "price": {"amount": 15.00, "currency": "USD"},
                  "amount": {"amount": 15.00, "currency": "USD"}}],
       "total": {"amount": 15.00, "currency": "USD"},
       "dealSaving": {"amount": 0.00, "currency": "USD"},
       "tax": {"amount": 0.00, "currency": "USD"},
       "paid": {"cash": {"amount": 15.00, "currency": "USD"}},
       "changeDue": {"amount": 0.00, "currency": "USD"},
       "movement": "01a0c101-2222-7000-8000-00000000000a", "undone": true, "notes": []}
      """;

  private SaleExamples() {}
}
