package org.barreltally.recall;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.barreltally.ledger.Bundle;
import org.barreltally.ledger.Column;
import org.barreltally.lots.JarsTold;
import org.barreltally.lots.NamedHolders;
import org.barreltally.lots.NamedHolders.Holding;
import org.barreltally.lots.Trace;
import org.barreltally.lots.Tracing;
import org.barreltally.lots.Whereabouts;

/** Finds what is left of recalled lots and who has it, as the book stands now. */
@ApplicationScoped
public class Finding {

  /** The outside accounts that stand for people. */
  private static final Set<String> PEOPLE = Set.of("customer", "bulk-buyer", "landowner", "given");

  private static final String HELD = "SELECT code, held FROM lots WHERE code = ANY (?::text[])";

  private static final String OWN_PLACES = "SELECT code FROM places WHERE kind IN ('home', 'out')";

  private final Recalling recalls;
  private final Tracing tracing;
  private final Instance<NamedHolders> capabilities;
  private final EntityManager entities;

  Finding(
      Recalling recalls,
      Tracing tracing,
      Instance<NamedHolders> capabilities,
      EntityManager entities) {
    this.recalls = recalls;
    this.tracing = tracing;
    this.capabilities = capabilities;
    this.entities = entities;
  }

  /**
   * @throws UnknownRecall if there is none of that id
   */
  @Transactional
  public Findings of(UUID id) {
    Recall recall = recalls.at(id);
    Trace trace = tracing.trace(recall.lot());
    Map<String, Boolean> held = new TreeMap<>();
    Set<String> own = new TreeSet<>();
    new Bundle()
        .ask(
            HELD,
            row -> held.put(row.getString(1), row.getBoolean(2)),
            Column.of("text", recall.lots()))
        .ask(OWN_PLACES, row -> own.add(row.getString(1)))
        .send(entities);
    List<JarsTold> jars = JarsTold.of(trace);
    List<Holding> holdings =
        capabilities.stream().flatMap(known -> known.of(recall.lots()).stream()).toList();
    return new Findings(
        recall,
        trace.ancestors(),
        held,
        jars.stream().filter(told -> own.contains(told.place())).toList(),
        trace.bulk().stream()
            .filter(bulk -> own.contains(bulk.place()) && bulk.grams() > 0)
            .toList(),
        jars.stream()
            .filter(told -> !own.contains(told.place()) && !PEOPLE.contains(told.place()))
            .toList(),
        holders(holdings),
        unnamed(jars, trace.bulk(), holdings),
        trace.jarsAccounted(),
        trace.jarsMade());
  }

  /** Holdings of the same name and address are one holder's. */
  private static List<Holder> holders(List<Holding> holdings) {
    SortedMap<String, List<Holding>> byPerson = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    holdings.forEach(
        holding ->
            byPerson
                .computeIfAbsent(
                    holding.name() + "\n" + String.join("\n", holding.address()),
                    k -> new ArrayList<>())
                .add(holding));
    List<Holder> holders = new ArrayList<>();
    for (List<Holding> theirs : byPerson.values()) {
      Holding first = theirs.get(0);
      TreeSet<String> channels = new TreeSet<>();
      theirs.forEach(holding -> channels.add(holding.channel()));
      holders.add(
          new Holder(
              holders.size() + 1,
              first.name(),
              first.address(),
              theirs.stream()
                  .map(Holding::contact)
                  .filter(contact -> contact != null && !contact.isBlank())
                  .findFirst()
                  .orElse(null),
              channels,
              theirs));
    }
    return holders;
  }

  private record Size(String account, String container) implements Comparable<Size> {
    @Override
    public int compareTo(Size other) {
      return (account + "\n" + (container == null ? "" : container))
          .compareTo(other.account + "\n" + (other.container == null ? "" : other.container));
    }
  }

  /** What left to people by the book, less what the named ones among them have of it. */
  private static List<Findings.Unnamed> unnamed(
      List<JarsTold> jars, List<Whereabouts.Bulk> bulk, List<Holding> holdings) {
    SortedMap<Size, Long> surely = new TreeMap<>();
    SortedMap<Size, Long> possibly = new TreeMap<>();
    for (JarsTold told : jars) {
      if (PEOPLE.contains(told.place())) {
        (told.exact() ? surely : possibly)
            .merge(new Size(told.place(), told.container()), told.count(), Long::sum);
      }
    }
    for (Whereabouts.Bulk syrup : bulk) {
      if (PEOPLE.contains(syrup.place()) && syrup.grams() > 0) {
        surely.merge(new Size(syrup.place(), null), syrup.grams(), Long::sum);
      }
    }
    for (Holding holding : holdings) {
      Size size = new Size(holding.place(), holding.container());
      if (holding.booked() && surely.containsKey(size)) {
        surely.merge(size, -holding.amount(), Long::sum);
      }
    }
    Set<Size> sizes = new TreeSet<>(surely.keySet());
    sizes.addAll(possibly.keySet());
    return sizes.stream()
        .map(
            size ->
                new Findings.Unnamed(
                    size.account(),
                    size.container(),
                    Math.max(0, surely.getOrDefault(size, 0L)),
                    possibly.getOrDefault(size, 0L)))
        .filter(rest -> rest.surely() + rest.possibly() > 0)
        .toList();
  }
}
