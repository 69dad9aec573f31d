package org.barreltally.pricing.rest;

/** Examples of the invented season, as a running program answered them. */
final class PriceListExamples {

  static final String SAID =
      """
      {"name": "Fair prices 2026", "audience": "show", "validFrom": "2026-07-01",
       "lines": [{"container": "HP", "price": {"amount": 9.00, "currency": "USD"}},
                 {"container": "PT", "price": {"amount": 15.00, "currency": "USD"}},
                 {"container": "PT", "grade": "golden", "price": {"amount": 17.00, "currency": "USD"}},
                 {"container": "QT", "price": {"amount": 25.00, "currency": "USD"}}],
       "deals": [{"container": "HP", "count": 2, "price": {"amount": 16.00, "currency": "USD"}}]}
      """;

  static final String LIST =
      """
      {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "name": "Fair prices 2026", "audience": "show",
       "validFrom": "2026-07-01", "currency": "USD", "taxIncluded": false, "version": 1,
       "lines": [{"container": "HP", "price": {"amount": 9.00, "currency": "USD"}, "productClass": "food"},
                 {"container": "PT", "price": {"amount": 15.00, "currency": "USD"}, "productClass": "food"},
                 {"container": "PT", "grade": "golden", "price": {"amount": 17.00, "currency": "USD"},
                  "productClass": "food"},
                 {"container": "QT", "price": {"amount": 25.00, "currency": "USD"}, "productClass": "food"}],
       "deals": [{"container": "HP", "count": 2, "price": {"amount": 16.00, "currency": "USD"}}],
       "warnings": [], "recordedAt": "2026-06-28T18:04:11Z"}
      """;

  static final String BASKET =
      """
      {"lines": [{"container": "HP", "grade": "amber", "count": 2}, {"container": "HP", "grade": "dark", "count": 1},
                 {"container": "QT", "count": 1}],
       "deal": true, "place": "VT", "on": "2026-08-15"}
      """;

  private PriceListExamples() {}
}
