package org.barreltally.shops;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Ids;
import org.barreltally.ledger.Places;
import org.barreltally.pricing.PriceLists;
import org.barreltally.refusal.InvalidField;
import org.barreltally.shops.internal.ShopRows;

/** The shops that sell on consignment, and what is agreed with them. */
@ApplicationScoped
public class Shops {

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final BigDecimal HALF = BigDecimal.valueOf(50);
  private static final int CODE_MAX = 34;
  private static final int DETAILS_MAX = 500;

  private final ShopRows rows;
  private final Places places;
  private final PriceLists lists;
  private final Days days;
  private final Ids ids;

  Shops(ShopRows rows, Places places, PriceLists lists, Days days, Ids ids) {
    this.rows = rows;
    this.places = places;
    this.lists = lists;
    this.days = days;
    this.ids = ids;
  }

  /**
   * The shop an address names.
   *
   * @throws UnknownShop if there is none of that code
   */
  @Transactional
  public Shop at(String code) {
    return rows.find(code).orElseThrow(() -> new UnknownShop(code));
  }

  /** By code, after a code (or null), at most so many. */
  @Transactional
  public List<Shop> list(String after, int limit) {
    return rows.list(after, limit);
  }

  /**
   * Makes a shop known; its shelf becomes a place of the ledger.
   *
   * @throws ShopExists if its code or name is taken
   * @throws InvalidField naming a term out of its range
   */
  @Transactional
  public Shop open(OpenShop said) {
    Terms terms = terms(said.terms());
    String code = said.code() == null ? code(said.name()) : said.code();
    if (rows.taken(code, said.name().strip())) {
      throw new ShopExists(said.name().strip(), "name");
    }
    String place = "shop-" + code;
    if (places.find(place).isPresent()) {
      throw new ShopExists(code, "code");
    }
    places.openOut(place, said.name().strip(), false);
    rows.add(code, said, place);
    rows.agree(code, terms);
    return at(code);
  }

  /**
   * Agrees terms with a shop from a day on; past counts keep theirs.
   *
   * @throws InvalidField naming a term out of its range
   */
  @Transactional
  public Shop agree(String code, AgreeTerms said) {
    Shop shop = at(code);
    rows.agree(shop.code(), terms(said));
    return at(code);
  }

  /**
   * Changes a shop's address and whom to ask there, or removes them.
   *
   * @param details null or blank for none; at most 500 characters
   * @throws UnknownShop if there is none of that code
   * @throws InvalidField if they are too long
   */
  @Transactional
  public Shop describe(String code, String details) {
    Shop shop = at(code);
    if (details != null && details.length() > DETAILS_MAX) {
      throw new InvalidField("details", "Keep it within " + DETAILS_MAX + " characters.");
    }
    rows.describe(shop.code(), details == null || details.isBlank() ? null : details.strip());
    return at(code);
  }

  private Terms terms(AgreeTerms said) {
    BigDecimal commission = said.commissionPercent();
    if (commission == null || commission.signum() < 0 || commission.compareTo(HUNDRED) >= 0) {
      throw new InvalidField(
          "commissionPercent",
          "Give what the shop keeps of each price, from 0 to under 100 percent.");
    }
    MissingRule missing = said.missing() == null ? MissingRule.SHOP : said.missing();
    if (said.priceList() != null) {
      lists.named(said.priceList(), "priceList");
    }
    return new Terms(
        ids.next(),
        said.validFrom() == null ? days.today() : days.known(said.validFrom(), "validFrom"),
        decimals(commission, "commissionPercent"),
        missing,
        bears(missing, said.shopBearsPercent()),
        said.priceList());
  }

  private static BigDecimal bears(MissingRule missing, BigDecimal said) {
    if (missing != MissingRule.SPLIT) {
      if (said != null) {
        throw new InvalidField(
            "shopBearsPercent", "Give it only where what is missing is split between you.");
      }
      return missing == MissingRule.SHOP ? HUNDRED : BigDecimal.ZERO;
    }
    BigDecimal part = said == null ? HALF : said;
    if (part.signum() < 0 || part.compareTo(HUNDRED) > 0) {
      throw new InvalidField("shopBearsPercent", "Give the shop's part, from 0 to 100 percent.");
    }
    return decimals(part, "shopBearsPercent");
  }

  private static BigDecimal decimals(BigDecimal percent, String field) {
    if (percent.stripTrailingZeros().scale() > 2) {
      throw new InvalidField(field, "Give at most two decimals.");
    }
    return percent;
  }

  private static String code(String name) {
    String letters =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}+", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    if (letters.isEmpty()) {
      throw new InvalidField("code", "Give a code of small letters and digits for this shop.");
    }
    return letters.substring(0, Math.min(CODE_MAX, letters.length())).replaceAll("-$", "");
  }
}
