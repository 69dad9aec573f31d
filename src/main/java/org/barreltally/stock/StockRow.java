package org.barreltally.stock;

import java.util.Comparator;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Quantity;

/**
 * Something that stands at an own place: the jars of one lot and size, or a vessel with syrup in
 * it.
 *
 * @param container of jars; null for a vessel
 * @param tag of a vessel; null for jars
 * @param grade null for a vessel whose syrup is not graded, and for jars of unknown lot and grade
 * @param lot null for jars whose lot nobody wrote down; sold so, they stand below zero
 * @param onHand pieces; null for a vessel
 * @param mass of the syrup in a vessel, kg; null for jars
 * @param volumeAt68F of the syrup in a vessel, US gallons; null for jars
 * @param held whether the lot is held
 */
public record StockRow(
    String place,
    Kind kind,
    String container,
    String tag,
    ColorClass grade,
    String lot,
    Long onHand,
    Quantity mass,
    Quantity volumeAt68F,
    boolean held) {

  /** What stands there. */
  public enum Kind {
    BARREL("barrel"),
    CONTAINER("container"),
    /** A vessel that keeps what was left of a run. */
    HEEL("heel");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }
  }

  /**
   * Where a row stands in the list: by place, kind, size or tag, and lot, each in the order of
   * their characters.
   */
  public record Key(String place, String kind, String name, String lot) implements Comparable<Key> {

    private static final Comparator<Key> ORDER =
        Comparator.comparing(Key::place)
            .thenComparing(Key::kind)
            .thenComparing(Key::name)
            .thenComparing(Key::lot);

    @Override
    public int compareTo(Key other) {
      return ORDER.compare(this, other);
    }

    /** As one word, for a cursor. */
    public String text() {
      return String.join(" ", place, kind, name, lot);
    }

    /** The key of a text made by {@link #text}. */
    public static Key of(String text) {
      String[] parts = text.split(" ", -1);
      if (parts.length != 4) {
        throw new IllegalArgumentException("not a place in the list");
      }
      return new Key(parts[0], parts[1], parts[2], parts[3]);
    }
  }

  public Key key() {
    return new Key(place, kind.code(), container == null ? tag : container, lotOrUnknown());
  }

  private String lotOrUnknown() {
    return lot != null ? lot : "?" + (grade == null ? "" : grade.code());
  }
}
