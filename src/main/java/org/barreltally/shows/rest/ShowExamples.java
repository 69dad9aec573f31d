package org.barreltally.shows.rest;

/** What is sent and answered about shows; all invented. */
final class ShowExamples {

  static final String BOOK =
      """
      {"name": "Fernby Harvest Fair", "town": "Fernby", "starts": "2026-10-03",
       "ends": "2026-10-04", "state": "accepted", "setUp": "2026-10-03T11:00:00Z",
       "organiser": {"name": "Fernby Fair Committee", "contact": "the office by the east gate"},
       "deadlines": {"apply": "2026-06-01", "pay": "2026-09-01"},
       "booth": {"fee": {"amount": 120.00, "currency": "USD"}, "percentOfSales": 5,
                 "tables": [{"lengthInches": 96, "depthInches": 30, "tiers": 3}]},
       "tableKit": "Kit 1", "kitItems": ["Canopy and weights", "Cash box", "Tasting spoons"],
       "helper": "Marla Quince", "vehicle": "Blue van",
       "vehicleLoad": {"value": 900, "unit": "lb"},
       "papers": ["Booth permit", "Insurance certificate"],
       "float": {"amount": 150.00, "currency": "USD"}, "visitorsExpected": 4000,
       "rainPlan": "Move into the sheep barn; go or stay is said at 6 in the morning"}
      """;

  static final String BOOKED =
      """
      {"id": "01a0c0de-7000-7000-8000-000000000001", "code": "fernby-harvest-fair-2026",
       "place": "fernby-harvest-fair-2026", "state": "accepted", "name": "Fernby Harvest Fair",
       "town": "Fernby", "starts": "2026-10-03", "ends": "2026-10-04",
       "helper": "Marla Quince", "vehicle": "Blue van", "tableKit": "Kit 1", "version": 1,
       "changedAt": "2026-05-02T14:00:00Z"}
      """;

  static final String CHANGE =
      """
      {"helper": "Piet Olsh", "vehicle": null,
       "booth": {"fee": {"amount": 135.00, "currency": "USD"}}}
      """;

  static final String PACK_OUT =
      """
      {"lines": [{"container": "PT", "lot": "P260620-1", "count": 60},
                 {"container": "HP", "lot": "P260725-1", "count": 48}],
       "float": {"amount": 150.00, "currency": "USD"}}
      """;

  static final String BACK =
      """
      {"lines": [{"container": "PT", "lot": "P260620-1", "count": 14, "broken": 1, "wetLabels": 3},
                 {"container": "HP", "lot": "P260725-1", "count": 9, "sampled": 2}],
       "drawer": {"denominations": [{"value": 20, "count": 31}, {"value": 10, "count": 12},
                                    {"value": 5, "count": 17}, {"value": 1, "count": 44},
                                    {"value": 0.25, "count": 12}], "total": 872.00}}
      """;

  static final String TRANSFER =
      """
      {"to": "01a0c0de-7000-7000-8000-000000000002",
       "lines": [{"container": "PT", "lot": "P260620-1", "count": 12},
                 {"container": "HP", "count": 6}]}
      """;

  private ShowExamples() {}
}
