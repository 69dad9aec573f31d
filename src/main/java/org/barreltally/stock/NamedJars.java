package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Item;
import org.barreltally.ledger.Items;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.ledger.Places;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.lots.UnknownLot;
import org.barreltally.refusal.InvalidField;

/** Finds the jars that lines name by container and lot, and the rooms they go to. */
@ApplicationScoped
public class NamedJars {

  private final Containers containers;
  private final Lots lots;
  private final Items items;
  private final Places places;

  NamedJars(Containers containers, Lots lots, Items items, Places places) {
    this.containers = containers;
    this.lots = lots;
    this.items = items;
    this.places = places;
  }

  /**
   * The items of lines, in the order of the lines, their lots locked against being held or graded.
   *
   * @throws InvalidField if a line names no container or lot
   * @throws UnknownLot if the book does not know the lot
   * @throws NoSuchJars if the lot was never packed in that size
   */
  public List<Item> locked(List<JarLine> lines, boolean heldMayGo) {
    for (int n = 0; n < lines.size(); n++) {
      named(lines.get(n), "lines[" + n + "]");
    }
    List<String> codes = lines.stream().map(JarLine::lot).distinct().toList();
    Map<String, Lot> known = lots.locked(codes);
    Map<String, Item> packed = packed(codes);
    List<Item> found = new ArrayList<>();
    for (int n = 0; n < lines.size(); n++) {
      JarLine line = lines.get(n);
      String path = "lines[" + n + "]";
      if (!known.containsKey(line.lot())) {
        throw new UnknownLot(line.lot(), path + ".lot");
      }
      if (known.get(line.lot()).held() && !heldMayGo) {
        throw new LotHeld(line.lot(), path + ".lot");
      }
      Item item = packed.get(key(line.lot(), line.container()));
      if (item == null) {
        throw new NoSuchJars(line.lot(), line.container(), path + ".container");
      }
      found.add(item);
    }
    return found;
  }

  private void named(JarLine line, String path) {
    containers.named(line.container(), path + ".container");
    if (line.lot() == null || line.lot().isBlank()) {
      throw new InvalidField(
          path + ".lot", "Give the code of the lot on the label, for example P260620-1.");
    }
  }

  private Map<String, Item> packed(Collection<String> codes) {
    Map<String, Item> packed = new HashMap<>();
    items.of(codes).stream()
        .filter(item -> !item.isSyrup())
        .forEach(item -> packed.put(key(item.lot(), item.container()), item));
    return packed;
  }

  private static String key(String lot, String container) {
    return lot + " " + container;
  }

  /** How many pieces of each item the lines name, together. */
  public static Map<Item, Long> together(List<Item> items, List<JarLine> lines) {
    Map<Item, Long> pieces = new LinkedHashMap<>();
    for (int n = 0; n < lines.size(); n++) {
      pieces.merge(items.get(n), lines.get(n).count(), Math::addExact);
    }
    return pieces;
  }

  /**
   * Checks how many jars lines name.
   *
   * @throws InvalidField naming each count that is missing or out of its range
   */
  public static void counts(List<JarLine> lines) {
    if (lines == null || lines.isEmpty() || lines.size() > JarLine.LINES_MAX) {
      throw new InvalidField("lines", "Give 1 to " + JarLine.LINES_MAX + " lines.");
    }
    for (int n = 0; n < lines.size(); n++) {
      JarLine line = lines.get(n);
      if (line == null) {
        throw new InvalidField("lines[" + n + "]", "Give container, lot and count.");
      }
      if (line.count() == null || line.count() < 1 || line.count() > JarLine.COUNT_MAX) {
        throw new InvalidField(
            "lines[" + n + "].count", "Give a whole number of jars from 1 to 1,000,000.");
      }
    }
  }

  /**
   * The room at home of that code, the cool room for null.
   *
   * @throws org.barreltally.ledger.UnknownPlace if there is none
   * @throws NotAtHome if it is a table or shop shelf
   */
  public String room(String code, String field) {
    Place place = places.atHand(Objects.requireNonNullElse(code, PlaceCode.COOL_ROOM), field);
    if (place.kind() != Place.Kind.HOME) {
      throw new NotAtHome(place.code(), field);
    }
    return place.code();
  }
}
