package org.barreltally.documents;

import java.util.List;

/**
 * What stands on a price card.
 *
 * @param grade its words; empty where the price is for every grade
 * @param deals for this jar, for example {@code 2 for $16}
 * @param ribbon an award; null where there is none
 * @param foot who, since when and by which list, small
 */
public record PriceCardText(
    String name,
    String contents,
    String grade,
    String price,
    List<String> deals,
    String ribbon,
    String foot) {

  public PriceCardText {
    deals = List.copyOf(deals);
  }
}
