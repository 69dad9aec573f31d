package org.barreltally.sales.internal;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;

/** Which jars ever came to a place. */
public final class PlaceJars {

  private final Set<UUID> items = new HashSet<>();
  private final Map<String, Set<String>> grades = new TreeMap<>();

  PlaceJars(List<?> rows) {
    for (Object row : rows) {
      Object[] c = (Object[]) row;
      items.add((UUID) c[0]);
      grades.computeIfAbsent((String) c[1], container -> new TreeSet<>()).add((String) c[2]);
    }
  }

  public boolean came(UUID item) {
    return items.contains(item);
  }

  /** The grade of a size of which jars of no other grade came. */
  public Optional<String> onlyGrade(String container) {
    Set<String> found = grades.getOrDefault(container, Set.of());
    return found.size() == 1 ? Optional.of(found.iterator().next()) : Optional.empty();
  }
}
