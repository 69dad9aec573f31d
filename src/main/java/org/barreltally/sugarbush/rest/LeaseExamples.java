package org.barreltally.sugarbush.rest;

/** What the operations on leases are shown with. Names are invented. */
final class LeaseExamples {

  static final String AGREE =
      """
      {"landowner": "Odile Fernsby", "bush": "Upper Wend", "season": 2026, "basis": "volume",
       "governs": "set", "ratePerTap": {"amount": 1.10, "currency": "USD"},
       "price": {"amount": 55.00, "currency": "USD"},
       "taps": [{"from": "2026-02-14", "count": 420}]}
      """;

  static final String LEASE =
      """
      {"id": "01a0d0de-7000-7000-8000-000000000001", "landowner": "Odile Fernsby",
       "landownerId": "01a0d0de-7000-7000-8000-000000000002", "bush": "Upper Wend",
       "season": 2026, "basis": "volume", "governs": "set",
       "ratePerTap": {"amount": 1.10, "currency": "USD"},
       "price": {"amount": 55.00, "currency": "USD"}, "containerCharges": [],
       "taps": [{"from": "2026-02-14", "count": 420, "kind": "set"}], "tapsCounted": 420}
      """;

  static final String TERMS =
      """
      {"basis": "volume-plus-container", "governs": "agreed",
       "ratePerTap": {"amount": 1.00, "currency": "USD"},
       "price": {"amount": 52.00, "currency": "USD"},
       "containerCharges": [{"container": "HP", "charge": {"amount": 1.25, "currency": "USD"}}]}
      """;

  static final String TAPS =
      """
      {"from": "2026-03-20", "count": 404, "kind": "set", "note": "The storm took eight trees"}
      """;

  static final String LANDOWNER =
      """
      {"id": "01a0d0de-7000-7000-8000-000000000002", "name": "Odile Fernsby",
       "address": "2 Wend Road, Fernby"}
      """;

  static final String NAMED =
      """
      {"name": "Odile Fernsby", "address": "2 Wend Road, Fernby"}
      """;

  private LeaseExamples() {}
}
