package org.barreltally.gifts.rest;

/** Invented requests for the description of the interface. */
final class GiftExamples {

  static final String TWO_AUNTS =
      """
      {"buyer": {"name": "Hesper Loomworks", "email": "orders@hesper-loomworks.example"},
       "recipients": [
         {"name": "Aunt Ottilie Quillfeather", "box": "Taster", "count": 1,
          "address": {"lines": ["4 Tarn Lane"], "town": "Fernby", "region": "VT",
                      "postcode": "05999", "country": "US"},
          "card": "From all of us at the loom.", "delivery": "post",
          "postage": {"amount": 12.50, "currency": "USD"}, "sendBy": "2026-12-14"},
         {"name": "Aunt Wilmet Quillfeather", "box": "Taster", "count": 2,
          "delivery": "collect", "sendBy": "2026-12-19"}],
       "deposit": {"amount": 39.25, "currency": "USD"}}
      """;

  static final String CSV =
      """
      name,line1,line2,town,region,postcode,country,box,count,card,delivery,postage,sendBy
      Aunt Ottilie Quillfeather,4 Tarn Lane,,Fernby,VT,05999,US,Taster,1,"From all of us, at the loom.",post,12.50,2026-12-14
      Aunt Wilmet Quillfeather,,,,,,,Taster,2,,collect,,2026-12-19
      """;

  private GiftExamples() {}
}
