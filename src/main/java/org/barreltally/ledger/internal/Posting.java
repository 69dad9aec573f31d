package org.barreltally.ledger.internal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Movement;
import org.barreltally.ledger.NotThatMuchThere;
import org.barreltally.ledger.Transfer;
import org.barreltally.ledger.internal.StandingBalances.Standing;

/**
 * Posts movements in two steps of one round trip each, however many there are and however many
 * entries they have: {@link #lock} makes the missing balance rows, locks all rows in sorted order
 * and reads the items; {@link #write} adds headers, balances, entries and availability. See
 * src/docs/adr for the measurements behind it.
 */
public final class Posting {

  private static final String HEADERS =
      """
      INSERT INTO movements
        (id, kind, happened_at, book_year, reason, reverses, entry_count, recorded_at, recorded_by)
      SELECT h.*, ?::timestamptz, ?::uuid
      FROM unnest(?::uuid[], ?::text[], ?::timestamptz[], ?::int[], ?::text[], ?::uuid[], ?::smallint[])
        AS h (id, kind, happened_at, book_year, reason, reverses, entry_count)
      """;

  private static final String ENTRIES =
      """
      INSERT INTO entries (movement, line, place, item, amount, balance_after, seq)
        SELECT * FROM unnest(?::uuid[], ?::smallint[], ?::text[], ?::uuid[], ?::bigint[],
          ?::bigint[], ?::bigint[])
      """;

  /**
   * A movement to be written.
   *
   * @param reverses the movement it takes back; null for none
   */
  public record Draft(UUID id, Movement movement, UUID reverses, int bookYear) {}

  /** An entry with what stands at its place afterwards. */
  private record Entry(UUID movement, int line, BalanceKey key, long amount, Standing after) {}

  private final List<Draft> drafts;
  private final Instant recordedAt;
  private final UUID recordedBy;
  private final List<SortedMap<BalanceKey, Long>> nets;
  private final SortedMap<BalanceKey, Long> total = new TreeMap<>();
  private final StandingBalances standing;
  private final ItemFacts facts = new ItemFacts();

  /**
   * @param drafts in the order in which they are posted
   * @param made the items that come to be with them
   */
  public Posting(List<Draft> drafts, Set<UUID> made, Instant recordedAt, UUID recordedBy) {
    this.drafts = List.copyOf(drafts);
    this.recordedAt = recordedAt;
    this.recordedBy = recordedBy;
    this.nets = drafts.stream().map(draft -> net(draft.movement())).toList();
    if (nets.stream().anyMatch(SortedMap::isEmpty)) {
      throw new IllegalArgumentException("a movement that moves nothing");
    }
    nets.forEach(net -> net.forEach((key, amount) -> total.merge(key, amount, Math::addExact)));
    this.standing = new StandingBalances(made);
  }

  /** What each place gains or loses of each item; a movement has one entry for each. */
  private static SortedMap<BalanceKey, Long> net(Movement movement) {
    SortedMap<BalanceKey, Long> net = new TreeMap<>();
    for (Transfer t : movement.transfers()) {
      net.merge(new BalanceKey(t.from(), t.item()), -t.amount(), Math::addExact);
      net.merge(new BalanceKey(t.to(), t.item()), t.amount(), Math::addExact);
    }
    net.values().removeIf(amount -> amount == 0);
    return net;
  }

  /** Locks what the movements change. */
  public void lock(Bundle ask) {
    List<BalanceKey> known = total.keySet().stream().filter(key -> !standing.isMade(key)).toList();
    standing.lock(known, ask);
    facts.ask(
        known.stream().map(BalanceKey::item).distinct().toList(),
        total.keySet().stream().map(BalanceKey::place).distinct().toList(),
        ask);
  }

  /**
   * Judges the movements and adds their rows, once they are locked.
   *
   * @throws NotThatMuchThere if a balance would go below zero where it may not
   */
  public void write(Collection<Item> made, Bundle write) {
    made.forEach(facts::know);
    total.keySet().stream()
        .filter(key -> standing.isMade(key) && facts.at(key.place()) != null)
        .forEach(key -> standing.begin(key, facts.at(key.place()).belowZero()));
    List<Entry> entries = new ArrayList<>();
    for (int n = 0; n < drafts.size(); n++) {
      follow(drafts.get(n).id(), nets.get(n), entries);
    }
    addHeaders(write);
    standing.write(write);
    addEntries(entries, write);
    PoolChange.write(
        facts.changes(total.keySet(), BalanceKey::place, BalanceKey::item, total::get), write);
  }

  /** Judges a movement after those before it, and lets the balances follow. */
  private void follow(UUID movement, SortedMap<BalanceKey, Long> net, List<Entry> entries) {
    int line = 0;
    for (Map.Entry<BalanceKey, Long> change : net.entrySet()) {
      BalanceKey key = change.getKey();
      long amount = change.getValue();
      Standing before = standing.of(key);
      if (before == null) {
        throw new IllegalArgumentException("no such place or item: " + key);
      }
      Standing after = before.plus(amount);
      if (after.amount() < 0 && amount < 0 && !before.belowZero()) {
        ItemFacts.Fact fact = facts.of(key.item());
        throw new NotThatMuchThere(
            key.place(), fact.lot(), fact.container(), before.amount(), -amount);
      }
      standing.put(key, after);
      entries.add(new Entry(movement, ++line, key, amount, after));
    }
  }

  private void addHeaders(Bundle write) {
    write.add(
        HEADERS,
        recordedAt,
        recordedBy,
        Column.of("uuid", drafts, Draft::id),
        Column.of("text", drafts, draft -> draft.movement().kind().code()),
        Column.of("timestamptz", drafts, draft -> draft.movement().happenedAt().toString()),
        Column.of("int", drafts, Draft::bookYear),
        Column.of("text", drafts, draft -> draft.movement().reason()),
        Column.of("uuid", drafts, Draft::reverses),
        Column.of("smallint", nets, SortedMap::size));
  }

  private static void addEntries(List<Entry> entries, Bundle write) {
    write.add(
        ENTRIES,
        Column.of("uuid", entries, Entry::movement),
        Column.of("smallint", entries, Entry::line),
        Column.of("text", entries, entry -> entry.key().place()),
        Column.of("uuid", entries, entry -> entry.key().item()),
        Column.of("bigint", entries, Entry::amount),
        Column.of("bigint", entries, entry -> entry.after().amount()),
        Column.of("bigint", entries, entry -> entry.after().seq()));
  }
}
