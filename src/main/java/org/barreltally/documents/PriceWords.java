package org.barreltally.documents;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Collection;
import java.util.Currency;
import java.util.Locale;
import java.util.regex.Pattern;
import org.barreltally.pricing.Money;

/**
 * How prices are said on one paper: with a sign where the fonts have it, and without cents where no
 * price on the paper has any.
 */
final class PriceWords {

  private static final Pattern SIGNS = Pattern.compile("[A-Z]{0,3}[$€£¥]");

  private final String sign;
  private final DecimalFormat format;

  /**
   * @param prices on the paper, all of one currency
   * @param farmCurrency whose dollar needs no country
   */
  PriceWords(Collection<Money> prices, String currency, String farmCurrency) {
    sign = sign(currency, farmCurrency);
    int decimals = Currency.getInstance(currency).getDefaultFractionDigits();
    boolean whole =
        prices.stream().allMatch(price -> price.amount().stripTrailingZeros().scale() <= 0);
    format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.US));
    format.setMinimumFractionDigits(whole ? 0 : decimals);
    format.setMaximumFractionDigits(whole ? 0 : decimals);
  }

  /** {@code $15}, {@code €15.50}, {@code CHF 15}. */
  String of(Money price) {
    return sign + format.format(price.amount());
  }

  private static String sign(String currency, String farmCurrency) {
    String symbol = Currency.getInstance(currency).getSymbol(Locale.US);
    if (!SIGNS.matcher(symbol).matches()) {
      return currency + " ";
    }
    boolean home = currency.equals(farmCurrency) && symbol.endsWith("$");
    return home ? "$" : symbol;
  }
}
