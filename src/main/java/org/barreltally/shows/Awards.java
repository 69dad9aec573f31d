package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Items;
import org.barreltally.lots.AwardsOfLots;
import org.barreltally.lots.LotAward;
import org.barreltally.lots.Lots;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.shows.internal.AwardLog;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.stock.NoSuchJars;

/** Classes entered at shows, how they were judged, and what a lot may boast of. */
@ApplicationScoped
public class Awards implements AwardsOfLots {

  private static final int CLASS_MAX = 80;
  private static final int LOT_MAX = 20;
  private static final int RIBBON_MAX = 60;
  private static final BigDecimal SCORE_MAX = BigDecimal.valueOf(1000);
  private static final int SCORE_DECIMALS = 3;

  private final Shows shows;
  private final Lots lots;
  private final Containers containers;
  private final Items items;
  private final AwardLog log;
  private final Days days;

  Awards(Shows shows, Lots lots, Containers containers, Items items, AwardLog log, Days days) {
    this.shows = shows;
    this.lots = lots;
    this.containers = containers;
    this.items = items;
    this.log = log;
    this.days = days;
  }

  /**
   * Notes a class entered, or how it was judged.
   *
   * @param versions of the show as the writer read it; null when the writer does not mind
   * @throws InvalidField naming every field that needs mending
   * @throws org.barreltally.lots.UnknownLot if the book does not know the lot
   * @throws NoSuchJars if the lot was never packed in that size
   */
  @Transactional
  public Award enter(UUID show, Set<String> versions, EnterAward said) {
    check(said);
    ShowRow row = shows.locked(show, versions);
    lots.named(said.lot(), "lot");
    if (said.container() != null) {
      containers.named(said.container(), "container");
      items
          .jarsOf(said.lot(), said.container())
          .orElseThrow(() -> new NoSuchJars(said.lot(), said.container(), "container"));
    }
    UUID id = log.keep(show, said);
    row.touched(days.now(), false);
    return ofShow(show).stream().filter(award -> award.id().equals(id)).findFirst().orElseThrow();
  }

  private static void check(EnterAward said) {
    List<FieldError> errors = new ArrayList<>();
    line(said.judgedClass(), CLASS_MAX, "class", true, errors);
    line(said.lot(), LOT_MAX, "lot", true, errors);
    line(said.ribbon(), RIBBON_MAX, "ribbon", false, errors);
    BigDecimal score = said.score();
    if (score != null
        && (score.signum() < 0
            || score.compareTo(SCORE_MAX) > 0
            || score.stripTrailingZeros().scale() > SCORE_DECIMALS)) {
      errors.add(new FieldError("score", "Give a score from 0 to 1000, with at most 3 decimals."));
    }
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
  }

  private static void line(
      String text, int most, String field, boolean needed, List<FieldError> errors) {
    boolean right =
        text == null
            ? !needed
            : !text.isBlank()
                && text.length() <= most
                && text.codePoints().noneMatch(Character::isISOControl);
    if (!right) {
      errors.add(new FieldError(field, "Give one line of 1 to " + most + " characters."));
    }
  }

  /** What holds of a show's classes, by class and lot. */
  @Transactional
  public List<Award> ofShow(UUID show) {
    return log.ofShow(show);
  }

  /**
   * What was won by lots of which jars of a size and grade are on hand and not held, the newest
   * show first.
   */
  @Transactional
  public List<Award> wonOnHand(String container, ColorClass grade) {
    return log.onHand(container, grade.code()).stream()
        .filter(award -> award.ribbon() != null)
        .toList();
  }

  @Override
  @Transactional
  public List<LotAward> of(String lot) {
    return log.ofLot(lot).stream().map(Award::asLotAward).toList();
  }
}
