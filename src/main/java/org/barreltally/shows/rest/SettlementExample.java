package org.barreltally.shows.rest;

/** A settlement, invented. */
final class SettlementExample {

  static final String SETTLED =
      """
      {"show": "01a0c0de-7000-7000-8000-000000000001", "state": "settled",
       "sold": [{"container": "PT", "count": 13, "recorded": 13, "unrecorded": 0, "beyond": 0}],
       "soldByLot": [{"container": "PT", "lot": "P260620-1", "least": 9, "most": 13},
                     {"container": "PT", "lot": "P260712-1", "least": 0, "most": 4}],
       "takings": {"amount": 183.00, "currency": "USD"},
       "cashFloat": {"amount": 150.00, "currency": "USD"},
       "cashDue": {"amount": 333.00, "currency": "USD"},
       "cashCounted": {"amount": 321.00, "currency": "USD"},
       "cashOverShort": {"amount": -12.00, "currency": "USD"},
       "hints": ["equals 6 × the 2.00 USD that the deal 2 × PT takes off"],
       "fee": {"amount": 129.15, "currency": "USD"}, "feePaid": {"amount": 120.00, "currency": "USD"},
       "feeDue": {"amount": 9.15, "currency": "USD"}, "profit": {"amount": 53.85, "currency": "USD"},
       "syrupCostNote": "No cost is known for the syrup of these lots, so profit is before syrup.",
       "hours": 8, "unitsPerHour": 1.63, "waitsFor": [], "countNeeded": [], "toLookAt": []}
      """;

  private SettlementExample() {}
}
