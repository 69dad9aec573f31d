package org.barreltally.shops;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.barreltally.refusal.InvalidField;

/**
 * Shares lines of a count that name no lot among the lots of their size that no other line names.
 * The oldest is taken to have gone first: broken, then sold, then missing.
 */
final class WithoutLot {

  private final List<CountShop.Line> said;
  private final List<Standing.Jars> shelf;

  private WithoutLot(List<CountShop.Line> said, List<Standing.Jars> shelf) {
    this.said = said;
    this.shelf = shelf;
  }

  /**
   * The lines with a lot each; those that had one stay where they were.
   *
   * @param shelf what the book has there, the oldest lot of a size first
   * @throws InvalidField if a size without lot is not there, is of several grades, or stands in two
   *     lines
   */
  static List<CountShop.Line> shared(List<CountShop.Line> said, List<Standing.Jars> shelf) {
    return new WithoutLot(said, shelf).lines();
  }

  private List<CountShop.Line> lines() {
    List<CountShop.Line> lines = new ArrayList<>(said);
    Set<String> sizes = new HashSet<>();
    for (int n = 0; n < said.size(); n++) {
      CountShop.Line line = said.get(n);
      if (line.lot() == null) {
        String path = "lines[" + n + "].lot";
        if (!sizes.add(line.container())) {
          throw new InvalidField(
              path,
              "An earlier line counts %s without lots too. Add the two up, or name the lots."
                  .formatted(line.container()));
        }
        List<CountShop.Line> shares = shares(line, unnamed(line.container(), path));
        lines.set(n, shares.get(0));
        lines.addAll(shares.subList(1, shares.size()));
      }
    }
    return lines;
  }

  private List<Standing.Jars> unnamed(String container, String path) {
    Set<String> named =
        said.stream()
            .filter(line -> container.equals(line.container()) && line.lot() != null)
            .map(CountShop.Line::lot)
            .collect(Collectors.toSet());
    List<Standing.Jars> jars =
        shelf.stream()
            .filter(jar -> jar.container().equals(container) && !named.contains(jar.lot()))
            .toList();
    if (jars.isEmpty()) {
      throw new InvalidField(
          path,
          "The book has no other lot of %s there. Give the code of the lot on the label."
              .formatted(container));
    }
    if (jars.stream().map(Standing.Jars::grade).distinct().count() > 1) {
      throw new InvalidField(
          path,
          "Jars of %s of more than one grade stand there. Count each lot by its code."
              .formatted(container));
    }
    return jars;
  }

  /** What goes beyond the book is put to the newest lot, where it is shown to be looked at. */
  private static List<CountShop.Line> shares(CountShop.Line line, List<Standing.Jars> jars) {
    long book = jars.stream().mapToLong(Standing.Jars::count).sum();
    long gone = Math.max(0, book - line.count());
    long broken = line.broken() == null ? 0 : line.broken();
    long sold = line.sold() == null ? 0 : line.sold();
    List<CountShop.Line> shares = new ArrayList<>();
    for (int i = 0; i < jars.size(); i++) {
      Standing.Jars jar = jars.get(i);
      boolean last = i == jars.size() - 1;
      long went = Math.min(jar.count(), gone);
      long brokenHere = last ? broken : Math.min(went, broken);
      long soldHere = last ? sold : Math.min(went - brokenHere, sold);
      long left = jar.count() - went + (last ? Math.max(0, line.count() - book) : 0);
      shares.add(
          new CountShop.Line(
              jar.container(), jar.lot(), left, line.sold() == null ? null : soldHere, brokenHere));
      gone -= went;
      broken -= brokenHere;
      sold -= soldHere;
    }
    return shares;
  }
}
