package org.barreltally.documents;

import org.barreltally.shops.Terms;

/** What was agreed with a shop, in a sentence. */
final class ShopWords {

  private ShopWords() {}

  static String terms(Terms terms) {
    String missing =
        switch (terms.missing()) {
          case SHOP -> "what is missing or broken is the shop's";
          case MAKER -> "what is missing or broken is the maker's";
          case SPLIT ->
              "of what is missing or broken the shop bears %s %%"
                  .formatted(terms.shopBearsPercent().stripTrailingZeros().toPlainString());
        };
    return "The shop keeps %s %% of each price; %s."
        .formatted(terms.commissionPercent().stripTrailingZeros().toPlainString(), missing);
  }
}
