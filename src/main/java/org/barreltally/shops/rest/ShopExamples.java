package org.barreltally.shops.rest;

/** What the operations on shops are shown with. Names are invented. */
final class ShopExamples {

  static final String OPEN =
      """
      {"name": "Quillback General Store", "details": "3 Millrace Lane; ask for Oswin",
       "since": "2026-09-01", "commissionPercent": 40, "missing": "split", "shopBearsPercent": 50}
      """;

  static final String SHOP =
      """
      {"code": "quillback-general-store", "name": "Quillback General Store",
       "details": "3 Millrace Lane; ask for Oswin", "place": "shop-quillback-general-store",
       "since": "2026-09-01T14:00:00Z",
       "terms": {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "validFrom": "2026-09-01",
                 "commissionPercent": 40, "missing": "split", "shopBearsPercent": 50}}
      """;

  static final String TERMS =
      """
      {"validFrom": "2027-01-01", "commissionPercent": 35, "missing": "shop"}
      """;

  static final String BRING =
      """
      {"on": "2026-09-01", "lines": [{"container": "PT", "lot": "P260620-1", "count": 24}]}
      """;

  static final String BROUGHT =
      """
      {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3e", "shop": "quillback-general-store",
       "direction": "delivered", "on": "2026-09-01",
       "movement": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3f",
       "lines": [{"container": "PT", "grade": "amber", "lot": "P260620-1", "count": 24}]}
      """;

  static final String COUNT =
      """
      {"on": "2026-12-05", "by": "Orla",
       "lines": [{"container": "PT", "lot": "P260620-1", "count": 9, "sold": 14, "broken": 0}]}
      """;

  static final String COUNTED =
      """
      {"id": "019b1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3e", "shop": "quillback-general-store",
       "on": "2026-12-05", "movement": "019b1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3f",
       "terms": {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "validFrom": "2026-09-01",
                 "commissionPercent": 40, "missing": "split", "shopBearsPercent": 50},
       "lines": [{"container": "PT", "grade": "amber", "lot": "P260620-1", "book": 24,
                  "counted": 9, "sold": 14, "broken": 0, "missing": 1,
                  "price": {"amount": 15.00, "currency": "USD"},
                  "due": {"amount": 130.50, "currency": "USD"}}],
       "due": {"amount": 130.50, "currency": "USD"}, "lookAt": []}
      """;

  static final String PAY =
      """
      {"on": "2026-12-20", "amount": {"amount": 130.50, "currency": "USD"}, "note": "Cheque"}
      """;

  static final String PAID =
      """
      {"id": "019b2f3a-6a3e-7b52-8f4e-3d1f6a1b2c3e", "shop": "quillback-general-store",
       "on": "2026-12-20", "amount": {"amount": 130.50, "currency": "USD"}, "note": "Cheque"}
      """;

  static final String STATEMENT =
      """
      {"shop": "quillback-general-store", "name": "Quillback General Store",
       "from": "2026-09-01", "to": "2026-12-31",
       "terms": {"id": "019a1f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d", "validFrom": "2026-09-01",
                 "commissionPercent": 40, "missing": "split", "shopBearsPercent": 50},
       "items": [{"container": "PT", "grade": "amber", "lot": "P260620-1", "opening": 0,
                  "delivered": 24, "fetched": 0, "sold": 14, "broken": 0, "missing": 1,
                  "otherwise": 0, "closing": 9}],
       "deliveries": [], "counts": [], "payments": [],
       "dueBefore": {"amount": 0.00, "currency": "USD"},
       "due": {"amount": 130.50, "currency": "USD"},
       "paid": {"amount": 130.50, "currency": "USD"},
       "balance": {"amount": 0.00, "currency": "USD"}}
      """;

  private ShopExamples() {}
}
