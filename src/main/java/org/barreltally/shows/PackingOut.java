package org.barreltally.shows;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.barreltally.ledger.Balances;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Ledger;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.MovementKind;
import org.barreltally.ledger.NotThatMuchThere;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.CurrencyMismatch;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.shows.internal.OutingLog;
import org.barreltally.shows.internal.ShowRow;
import org.barreltally.stock.FreeJars;

/**
 * Packs jars out to a show. What was promised to the show is used up first; beyond that only what
 * nobody else was promised may go.
 */
@ApplicationScoped
public class PackingOut {

  private static final int NOTE_MAX = 500;

  private final Shows shows;
  private final Stepping stepping;
  private final Promises promises;
  private final NamedJars jars;
  private final Balances balances;
  private final FreeJars free;
  private final Ledger ledger;
  private final OutingLog log;
  private final FarmSettings settings;
  private final Days days;

  PackingOut(
      Shows shows,
      Stepping stepping,
      Promises promises,
      NamedJars jars,
      Balances balances,
      FreeJars free,
      Ledger ledger,
      OutingLog log,
      FarmSettings settings,
      Days days) {
    this.shows = shows;
    this.stepping = stepping;
    this.promises = promises;
    this.jars = jars;
    this.balances = balances;
    this.free = free;
    this.ledger = ledger;
    this.log = log;
    this.settings = settings;
    this.days = days;
  }

  /**
   * Packs out, all lines or none. Several pack-outs of a show add up.
   *
   * @param versions of the show as the writer read it; null when the writer does not mind
   * @throws NotThatFarYet unless the show is accepted, paid, packed or running
   * @throws org.barreltally.lots.LotHeld if a lot is held
   * @throws NotThatMuchThere if fewer stand in the room
   * @throws org.barreltally.stock.PromisedElsewhere if too few are free of promises to others
   */
  @Transactional
  public PackedOut packOut(UUID id, Set<String> versions, PackOut said) {
    NamedJars.counts(said.lines());
    Money cash = cashFloat(said.cashFloat());
    if (said.note() != null && said.note().length() > NOTE_MAX) {
      throw new InvalidField("note", "Keep it within " + NOTE_MAX + " characters.");
    }
    Instant at = said.at() == null ? days.now() : days.happened(said.at(), "at");
    ShowRow row = shows.locked(id, versions);
    Show show = shows.asShow(row);
    if (!show.state().takesJars()) {
      throw new NotThatFarYet(
          show,
          "nothing is packed out to it",
          "Pack-out is for a show that is accepted, paid, packed or running.");
    }
    String room = jars.room(said.from(), "from");
    Map<Item, Long> pieces = NamedJars.together(jars.locked(said.lines(), false), said.lines());
    refuseShort(room, pieces);
    usePromises(id, pieces);
    UUID movement = post(room, show.place(), at, said.note(), pieces);
    UUID packOut = log.packedOut(id, movement, cash, said.note());
    if (show.state() == ShowState.ACCEPTED || show.state() == ShowState.PAID) {
      show = stepping.become(row, ShowState.PACKED, null);
    } else {
      row.touched(days.now(), false);
    }
    return new PackedOut(
        packOut,
        id,
        show.place(),
        show.state(),
        movement,
        pieces.entrySet().stream().map(PackingOut::line).toList(),
        log.cashFloat(id).orElse(Money.none(currency())));
  }

  private Money cashFloat(Money said) {
    if (said != null && said.signum() < 0) {
      throw new InvalidField("float", "Give the change money, not below nothing.");
    }
    if (said != null && !said.currency().equals(currency())) {
      throw new CurrencyMismatch(said.currency(), currency(), "float");
    }
    return said;
  }

  private String currency() {
    return settings.now().said().currency();
  }

  /** Locks the jars for this transaction, and refuses what is not in the room. */
  private void refuseShort(String room, Map<Item, Long> pieces) {
    Map<UUID, Long> standing = balances.locked(room, pieces.keySet());
    pieces.forEach(
        (item, count) -> {
          long there = standing.getOrDefault(item.id(), 0L);
          if (there < count) {
            throw new NotThatMuchThere(room, item.lot(), item.container(), there, count);
          }
        });
  }

  /** The pools are locked with the jars, so nobody promises meanwhile. */
  private void usePromises(UUID show, Map<Item, Long> pieces) {
    free.require(pieces, (container, grade) -> promises.open(show, container, grade));
    FreeJars.byPool(pieces)
        .forEach(
            (container, grades) ->
                grades.forEach(
                    (grade, wanted) -> {
                      long own = Math.min(wanted, promises.open(show, container, grade));
                      if (own > 0) {
                        promises.take(show, container, grade, own);
                      }
                    }));
  }

  private UUID post(String from, String to, Instant at, String why, Map<Item, Long> pieces) {
    Movement.Builder movement = Movement.of(MovementKind.PACK_OUT, at).because(why);
    pieces.forEach((item, count) -> movement.move(from, to, item.id(), count));
    return ledger.post(movement.build());
  }

  private static PackedOut.Line line(Map.Entry<Item, Long> packed) {
    Item item = packed.getKey();
    return new PackedOut.Line(
        item.container(), item.lot(), ColorClass.of(item.grade()), packed.getValue());
  }
}
