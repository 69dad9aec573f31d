package org.barreltally.shows.settling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import org.barreltally.sales.Merged;
import org.barreltally.sales.Merging;
import org.barreltally.sales.SaidSale;
import org.barreltally.shows.Show;
import org.barreltally.shows.Shows;
import org.barreltally.shows.Stepping;

/** Takes sales for a show's table. */
@ApplicationScoped
public class TableSelling {

  private final Shows shows;
  private final Stepping stepping;
  private final Merging merging;

  TableSelling(Shows shows, Stepping stepping, Merging merging) {
    this.shows = shows;
    this.stepping = stepping;
    this.merging = merging;
  }

  /**
   * Merges sales; the first one sets the show running.
   *
   * @param one whether a single sale was told, not a list
   * @throws org.barreltally.shows.UnknownShow if there is no such show
   */
  @Transactional
  public List<Merged> sell(UUID id, List<SaidSale> told, boolean one) {
    Show show = shows.at(id);
    stepping.selling(id);
    return merging.merge(ShowReckoning.stall(show), told, one);
  }
}
