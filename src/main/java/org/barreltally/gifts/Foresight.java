package org.barreltally.gifts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.barreltally.ledger.Days;

/** Shows before anything is promised what there is and will be, day by day; stores nothing. */
@ApplicationScoped
public class Foresight {

  /** What a recipient wants, and on which day the boxes leave. */
  private record Wanted(LocalDate on, List<Need> needs) {}

  private final GiftOrders orders;
  private final GiftOrdering ordering;
  private final Promises promises;
  private final CanningPlans plans;
  private final ShowsBetween shows;
  private final Days days;

  Foresight(
      GiftOrders orders,
      GiftOrdering ordering,
      Promises promises,
      CanningPlans plans,
      ShowsBetween shows,
      Days days) {
    this.orders = orders;
    this.ordering = ordering;
    this.promises = promises;
    this.plans = plans;
    this.shows = shows;
    this.days = days;
  }

  /**
   * For an order that is not taken yet.
   *
   * @param planned whether planned canning counts
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   */
  @Transactional
  public Outlook before(OrderGifts said, boolean planned) {
    List<Wanted> wanted = new ArrayList<>();
    List<CheckedRecipient> recipients = ordering.check(said);
    for (int i = 0; i < recipients.size(); i++) {
      CheckedRecipient each = recipients.get(i);
      wanted.add(new Wanted(day(each.sendBy()), Needs.of(i + 1, each.box(), each.count())));
    }
    return outlook(wanted, planned);
  }

  /** For what of an order is not reserved yet. */
  @Transactional
  public Outlook of(UUID id, boolean planned) {
    GiftOrder order = orders.at(id);
    return outlook(
        order.lines().stream()
            .filter(line -> line.state() == RecipientState.CONFIRMED)
            .filter(line -> order.promises(line.n()).isEmpty())
            .map(
                line ->
                    new Wanted(
                        day(line.sendBy()), Needs.of(line.n(), order.box(line), line.count())))
            .toList(),
        planned);
  }

  private LocalDate day(LocalDate sendBy) {
    LocalDate today = days.today();
    return sendBy == null || sendBy.isBefore(today) ? today : sendBy;
  }

  private Outlook outlook(List<Wanted> wanted, boolean planned) {
    List<Need> all = wanted.stream().flatMap(w -> w.needs().stream()).toList();
    Map<Jar, Long> available = promises.available(all, false);
    SortedMap<LocalDate, List<Need>> byDay = new TreeMap<>();
    wanted.forEach(w -> byDay.computeIfAbsent(w.on(), d -> new ArrayList<>()).addAll(w.needs()));
    Map<LocalDate, Map<Jar, Long>> byShows =
        byDay.isEmpty() ? Map.of() : shows.until(byDay.lastKey());
    List<Outlook.Day> shown = new ArrayList<>();
    List<Need> upTo = new ArrayList<>();
    Allotment last = Allotment.of(List.of(), Map.of());
    for (Map.Entry<LocalDate, List<Need>> day : byDay.entrySet()) {
      upTo.addAll(day.getValue());
      Map<Jar, Long> booked = booked(byShows, day.getKey());
      Map<Jar, Long> canned = planned ? planned(day.getKey()) : Map.of();
      Map<Jar, Long> free = new HashMap<>();
      available.forEach(
          (jar, pieces) ->
              free.put(jar, pieces - booked.getOrDefault(jar, 0L) + canned.getOrDefault(jar, 0L)));
      last = Allotment.of(upTo, free);
      shown.add(new Outlook.Day(day.getKey(), lines(upTo, available, booked, canned, free, last)));
    }
    return new Outlook(
        Allotment.of(all, available).unmet().isEmpty(),
        shown,
        last.met().stream()
            .filter(Allotted::substitute)
            .map(a -> new Outlook.Swap(a.n(), a.wanted(), a.jar(), a.pieces()))
            .toList(),
        last.unmet().stream()
            .map(need -> new Outlook.Lack(need.n(), need.wanted(), need.pieces()))
            .toList());
  }

  private static List<Outlook.Line> lines(
      List<Need> needs,
      Map<Jar, Long> available,
      Map<Jar, Long> booked,
      Map<Jar, Long> canned,
      Map<Jar, Long> free,
      Allotment allotment) {
    Map<Jar, Long> wanted = new HashMap<>();
    Map<Jar, Long> lacking = new HashMap<>();
    Set<Jar> jars = new LinkedHashSet<>();
    needs.forEach(need -> jars.addAll(need.choices()));
    needs.forEach(need -> wanted.merge(need.wanted(), need.pieces(), Long::sum));
    allotment.unmet().forEach(need -> lacking.merge(need.wanted(), need.pieces(), Long::sum));
    return jars.stream()
        .map(
            jar ->
                new Outlook.Line(
                    jar.container(),
                    jar.grade().code(),
                    wanted.getOrDefault(jar, 0L),
                    available.get(jar),
                    booked.getOrDefault(jar, 0L),
                    canned.getOrDefault(jar, 0L),
                    free.get(jar),
                    lacking.getOrDefault(jar, 0L)))
        .toList();
  }

  private static Map<Jar, Long> booked(Map<LocalDate, Map<Jar, Long>> byShows, LocalDate day) {
    Map<Jar, Long> booked = new HashMap<>();
    byShows.forEach(
        (starts, wanted) -> {
          if (!starts.isAfter(day)) {
            wanted.forEach((jar, pieces) -> booked.merge(jar, pieces, Long::sum));
          }
        });
    return booked;
  }

  private Map<Jar, Long> planned(LocalDate day) {
    Map<Jar, Long> planned = new HashMap<>();
    plans
        .until(day)
        .forEach(p -> planned.merge(new Jar(p.container(), p.grade()), p.count(), Long::sum));
    return planned;
  }
}
