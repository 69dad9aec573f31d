package org.barreltally.sales.away;

import java.util.ArrayList;
import java.util.List;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.sales.Channel;

/** The form of what is said of a sale away from shows, beside its lines and money. */
final class AwayRules {

  private static final int NAME_MAX = 100;
  private static final int ADDRESS_LINES_MAX = 8;
  private static final int PLACE_MAX = 80;

  /** The most lines that fit a paper of one page. */
  private static final int LINES_MAX = 30;

  private final List<FieldError> errors = new ArrayList<>();

  private AwayRules() {}

  /**
   * @throws InvalidField naming every field that is missing, malformed or too long
   */
  static Channel check(SellAway said) {
    AwayRules rules = new AwayRules();
    Channel channel =
        switch (said.channel() == null ? "" : said.channel()) {
          case "farm" -> Channel.FARM;
          case "post" -> Channel.POST;
          case "wholesale" -> Channel.WHOLESALE;
          default -> null;
        };
    rules.require(channel != null, "channel", "Give one of farm, post, wholesale.");
    rules.require(
        said.lines() != null && !said.lines().isEmpty() && said.lines().size() <= LINES_MAX,
        "lines",
        "Give 1 to " + LINES_MAX + " lines.");
    rules.require(
        fits(said.taxPlace(), PLACE_MAX),
        "taxPlace",
        "Keep it within " + PLACE_MAX + " characters.");
    if (said.buyer() != null) {
      rules.buyer(said.buyer());
    }
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
    return channel;
  }

  private void buyer(SellAway.Buyer buyer) {
    require(
        buyer.name() != null && !buyer.name().isBlank() && fits(buyer.name(), NAME_MAX),
        "buyer.name",
        "Name the buyer in one line of at most " + NAME_MAX + " characters.");
    require(
        buyer.address().size() <= ADDRESS_LINES_MAX
            && buyer.address().stream().allMatch(line -> line != null && fits(line, NAME_MAX)),
        "buyer.address",
        "Give at most %d lines of at most %d characters.".formatted(ADDRESS_LINES_MAX, NAME_MAX));
    require(
        fits(buyer.contact(), NAME_MAX),
        "buyer.contact",
        "Keep it in one line of at most " + NAME_MAX + " characters.");
  }

  private static boolean fits(String text, int most) {
    return text == null
        || text.length() <= most && text.codePoints().noneMatch(Character::isISOControl);
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
