package org.barreltally.sales.away;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.sales.Note;
import org.barreltally.sales.SaidSale;
import org.barreltally.sales.internal.RoomJars;
import org.barreltally.stock.NoSuchJars;

/**
 * Of which lots the jars of a sale from a room are: those named, else the oldest that are not held
 * (first in, first out, common practice), and the sale says so.
 */
@ApplicationScoped
class LotChoice {

  private final Containers containers;
  private final Lots lots;
  private final Items items;
  private final RoomJars room;

  LotChoice(Containers containers, Lots lots, Items items, RoomJars room) {
    this.containers = containers;
    this.lots = lots;
    this.items = items;
    this.room = room;
  }

  /** Jars of one lot, out of a line that was said. */
  record Taken(Item item, SaidSale.Line line) {}

  /**
   * The jars of the lines; a line without lot may be of several.
   *
   * @throws org.barreltally.lots.UnknownLot if there is no such lot
   * @throws NoSuchJars if a lot was never packed in that size
   * @throws LotHeld if a lot that was named is held
   * @throws NotThatManyThere if a line without lot wants more than all lots have
   */
  List<Taken> of(String place, List<SaidSale.Line> lines, List<Note> notes) {
    List<Taken> taken = new ArrayList<>();
    Map<UUID, Long> used = new HashMap<>();
    for (int n = 0; n < lines.size(); n++) {
      SaidSale.Line line = lines.get(n);
      String field = "lines[" + n + "]";
      containers.named(line.container(), field + ".container");
      if (line.lot() != null) {
        Item item = named(line, field);
        used.merge(item.id(), (long) line.count(), Long::sum);
        taken.add(new Taken(item, line));
      } else {
        taken.addAll(oldest(place, line, field, used, notes, taken.size()));
      }
    }
    return taken;
  }

  private Item named(SaidSale.Line line, String field) {
    Lot lot = lots.named(line.lot(), field + ".lot");
    if (lot.held()) {
      throw new LotHeld(lot.code(), field + ".lot");
    }
    return items
        .jarsOf(line.lot(), line.container())
        .orElseThrow(() -> new NoSuchJars(line.lot(), line.container(), field + ".container"));
  }

  private List<Taken> oldest(
      String place,
      SaidSale.Line line,
      String field,
      Map<UUID, Long> used,
      List<Note> notes,
      int before) {
    List<RoomJars.Standing> there = room.oldestFirst(place, line.container(), line.grade());
    List<Taken> taken = new ArrayList<>();
    long open = line.count();
    long all = 0;
    for (RoomJars.Standing lot : there) {
      long free = lot.pieces() - used.getOrDefault(lot.item().id(), 0L);
      all += Math.max(0, free);
      long takes = Math.min(open, free);
      if (takes > 0) {
        open -= takes;
        used.merge(lot.item().id(), takes, Long::sum);
        taken.add(
            new Taken(
                lot.item(),
                new SaidSale.Line(
                    line.container(), null, line.grade(), (int) takes, line.price())));
      }
    }
    if (open > 0) {
      throw new NotThatManyThere(place, line.container(), all, line.count(), field + ".count");
    }
    if (there.size() > 1) {
      for (int n = 0; n < taken.size(); n++) {
        notes.add(
            new Note(
                before + n + 1,
                "lot-chosen",
                "No lot was said; of %d lots there the oldest was taken, %s. Name the lot on the label to be sure."
                    .formatted(there.size(), taken.get(n).item().lot())));
      }
    }
    return taken;
  }
}
