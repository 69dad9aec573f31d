package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.barreltally.measure.ColorClass;
import org.barreltally.shows.Award;
import org.barreltally.shows.Awards;

/**
 * The ribbon that the newest show gave to a lot of which such jars are on hand. A card for every
 * grade shows none, because one grade won it.
 */
@ApplicationScoped
class ShowRibbons implements RibbonLines {

  /** A longer line would not be read on a card. */
  private static final int LINE_MAX = 60;

  private final Awards awards;

  ShowRibbons(Awards awards) {
    this.awards = awards;
  }

  @Override
  public Optional<String> on(String container, ColorClass grade) {
    return grade == null
        ? Optional.empty()
        : awards.wonOnHand(container, grade).stream()
            .map(ShowRibbons::line)
            .filter(line -> line.length() <= LINE_MAX)
            .findFirst();
  }

  private static String line(Award award) {
    return "%s, %s %d".formatted(award.ribbon(), award.showName(), award.on().getYear());
  }
}
