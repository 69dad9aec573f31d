package org.barreltally.pricing;

import static org.barreltally.Owner.posts;

/** Price lists to try others with. */
final class EnteredLists {

  private EnteredLists() {}

  /** Enters a list and answers its id. */
  static String entered(String said) {
    return posts("/api/price-lists", said).statusCode(201).extract().path("id");
  }

  /** Half-pints at a price, pints 15 (golden 17), quarts 25, two half-pints for 16. */
  static String list(String audience, String from, String halfPint, String more) {
    return """
        {'name': 'Prices', 'audience': '%s', 'validFrom': '%s', %s
         'lines': [{'container': 'HP', 'price': {'amount': %s, 'currency': 'USD'}},
                   {'container': 'PT', 'price': {'amount': 15.00, 'currency': 'USD'}},
                   {'container': 'QT', 'price': {'amount': 25.00, 'currency': 'USD'}},
                   {'container': 'PT', 'grade': 'golden', 'price': {'amount': 17.00, 'currency': 'USD'}}],
         'deals': [{'container': 'HP', 'count': 2, 'price': {'amount': 16.00, 'currency': 'USD'}}]}
        """
        .formatted(audience, from, more, halfPint);
  }
}
