package org.barreltally.shows.settling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sales.LotSettling;
import org.barreltally.shows.Show;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.Shows;
import org.barreltally.shows.Stepping;
import org.barreltally.shows.internal.SettlementLog;

/**
 * Settles a show: reckons it, lets the book follow the counts, and keeps the answer. Reading a
 * settlement always reckons it anew, so a count that arrives later at a show it exchanged jars with
 * narrows it by itself.
 */
@ApplicationScoped
public class Settling {

  private final Shows shows;
  private final Stepping stepping;
  private final ShowReckoning reckoning;
  private final LotSettling lots;
  private final SettlementLog log;

  Settling(
      Shows shows,
      Stepping stepping,
      ShowReckoning reckoning,
      LotSettling lots,
      SettlementLog log) {
    this.shows = shows;
    this.stepping = stepping;
    this.reckoning = reckoning;
    this.lots = lots;
    this.log = log;
  }

  /**
   * Settles a show that was counted back or called off; again if something changed since.
   *
   * @throws NotCountedYet if its jars were not counted back
   * @throws InvalidField if an amount or the hours are below zero
   */
  @Transactional
  public Settlement settle(UUID id, SettleShow said) {
    SettleRules.check(said);
    Show show = shows.at(id);
    if (show.state() != ShowState.CALLED_OFF) {
      if (show.state() != ShowState.CLOSED && show.state() != ShowState.SETTLED) {
        throw new NotCountedYet(show);
      }
      show = stepping.settled(id);
    }
    Map<String, Boolean> counted = new TreeMap<>(reckoning.counted(show));
    UUID movement = lots.follow(counted, "Settlement of " + show.words()).orElse(null);
    Settlement told = reckoning.of(show, said).posted(movement, show.state());
    log.keep(id, said, told, movement);
    return told;
  }

  /** How a show stands now, with what was said when it was settled last. */
  @Transactional
  public Settlement read(UUID id) {
    Show show = shows.at(id);
    SettleShow said = log.newest(id).orElse(SettleShow.NOTHING);
    return reckoning.of(show, said).posted(log.movement(id).orElse(null), show.state());
  }
}
