package org.barreltally.sales;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.barreltally.sales.bylot.LotReckoning;
import org.barreltally.sales.bylot.SoldByLot;
import org.barreltally.sales.bylot.TableJars;
import org.barreltally.sales.bylot.Unlotted;
import org.barreltally.sales.internal.TableFacts;
import org.barreltally.sales.internal.TableFacts.Standing;
import org.barreltally.sales.internal.TableFacts.Way;

/**
 * Reckons from the ledger what was sold at tables, exactly by size, and as well as can be by lot.
 */
@ApplicationScoped
public class TableReckoning {

  private final TableFacts facts;

  TableReckoning(TableFacts facts) {
    this.facts = facts;
  }

  /** A place and all that exchanged jars without lot with it, directly or over others. */
  @Transactional
  public SortedSet<String> exchanging(String place) {
    SortedSet<String> found = new TreeSet<>(Set.of(place));
    int before;
    do {
      before = found.size();
      for (Way way : facts.ways(Set.copyOf(found))) {
        found.add(way.from());
        found.add(way.to());
      }
    } while (found.size() > before);
    return found;
  }

  /**
   * What was sold at places that exchanged jars, by size.
   *
   * @param counted by place, whether what was not sold was counted back
   */
  @Transactional
  public Map<String, SizeReckoning> of(Map<String, Boolean> counted) {
    List<Way> ways = facts.ways(counted.keySet());
    Map<String, SizeReckoning> found = new TreeMap<>();
    facts.standing(counted.keySet()).stream()
        .collect(Collectors.groupingBy(Standing::container, TreeMap::new, Collectors.toList()))
        .forEach(
            (container, standing) ->
                found.put(
                    container,
                    size(
                        container,
                        counted,
                        standing,
                        ways.stream().filter(w -> w.container().equals(container)).toList())));
    return found;
  }

  private static SizeReckoning size(
      String container, Map<String, Boolean> counted, List<Standing> standing, List<Way> ways) {
    Map<String, SizeReckoning.Total> totals = new TreeMap<>();
    List<TableJars> tables = new ArrayList<>();
    counted.forEach(
        (place, isCounted) -> {
          List<Standing> here = standing.stream().filter(s -> s.place().equals(place)).toList();
          long recorded = here.stream().mapToLong(Standing::sold).sum();
          long difference = recorded + here.stream().mapToLong(Standing::left).sum();
          totals.put(
              place, new SizeReckoning.Total(recorded, isCounted ? (Long) difference : null));
          tables.add(table(place, isCounted, here));
        });
    SoldByLot byLot =
        LotReckoning.of(tables, unlotted(counted, standing, ways, gradeOfLots(standing)));
    if (!byLot.contradictions().isEmpty()) {
      // Grades may have changed since: then any lot may be meant.
      SoldByLot wider = LotReckoning.of(tables, unlotted(counted, standing, ways, null));
      byLot = wider.contradictions().isEmpty() ? wider : byLot;
    }
    return new SizeReckoning(container, totals, byLot);
  }

  private static TableJars table(String place, boolean counted, List<Standing> here) {
    Map<String, Long> left = new TreeMap<>();
    Map<String, Long> sold = new TreeMap<>();
    for (Standing s : here) {
      if (s.lot() != null) {
        left.put(s.lot(), s.left());
        sold.put(s.lot(), Math.max(0, s.sold()));
      }
    }
    return new TableJars(place, counted, left, sold);
  }

  private static Map<String, Set<String>> gradeOfLots(List<Standing> standing) {
    Map<String, Set<String>> lots = new TreeMap<>();
    for (Standing s : standing) {
      if (s.lot() != null) {
        lots.computeIfAbsent(s.grade(), grade -> new HashSet<>()).add(s.lot());
      }
    }
    return lots;
  }

  /**
   * What went without lot: over to other tables, and at tables not counted yet to buyers. At a
   * counted table the difference tells it.
   *
   * @param lotsByGrade null if a lot of any grade can be in it
   */
  private static List<Unlotted> unlotted(
      Map<String, Boolean> counted,
      List<Standing> standing,
      List<Way> ways,
      Map<String, Set<String>> lotsByGrade) {
    List<Unlotted> found = new ArrayList<>();
    for (Way way : ways) {
      found.add(new Unlotted(way.from(), way.to(), way.count(), lots(lotsByGrade, way.grade())));
    }
    for (Standing s : standing) {
      if (s.lot() == null && !counted.get(s.place()) && s.sold() > 0) {
        found.add(new Unlotted(s.place(), Unlotted.SOLD, s.sold(), lots(lotsByGrade, s.grade())));
      }
    }
    return found;
  }

  private static Set<String> lots(Map<String, Set<String>> byGrade, String grade) {
    return byGrade == null || grade == null ? null : byGrade.getOrDefault(grade, Set.of());
  }
}
