package org.barreltally.documents;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.barreltally.gifts.Allotted;
import org.barreltally.gifts.GiftJars;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.GiftOutcome;
import org.barreltally.gifts.Jar;
import org.barreltally.gifts.Person;
import org.barreltally.gifts.PostalLines;

/** How the papers of a gift order name jars, recipients and places. */
final class GiftWords {

  static final String REMOVED = "(name removed)";

  private final UnaryOperator<String> sizes;

  /**
   * @param sizes the name of a container by its code
   */
  GiftWords(UnaryOperator<String> sizes) {
    this.sizes = sizes;
  }

  /** {@code Half-pint jug, Golden, delicate taste}. */
  String of(Jar jar) {
    return sizes.apply(jar.container()) + ", " + jar.grade().words();
  }

  /** {@code Half-pint jug Golden}, where the taste need not be said. */
  private String brief(Jar jar) {
    return sizes.apply(jar.container()) + " " + jar.grade().words().split(",")[0];
  }

  /** Jars by size and grade, and where one is in another's stead. */
  List<String> contents(GiftOrder order, GiftLine line) {
    return GiftOutcome.contents(order, line).stream().map(this::content).toList();
  }

  String content(Allotted jars) {
    String words = jars.pieces() + " × " + brief(jars.jar());
    return jars.substitute() ? words + " (in place of " + brief(jars.wanted()) + ")" : words;
  }

  /** {@code lot P260620-1: 2 × HP golden}, one after the other. */
  static String lots(GiftOrder order, GiftLine line) {
    List<GiftJars> jars = order.jars(line.n());
    return jars.isEmpty()
        ? "not picked yet"
        : jars.stream()
            .map(j -> "lot " + j.lot() + ": " + j.pieces() + " × " + j.jar().words())
            .collect(Collectors.joining("; "));
  }

  static String name(Person person) {
    return person.name() == null ? REMOVED : person.name();
  }

  /** The lines of the address under the name; none where there is no address. */
  static List<String> address(Person person, String home) {
    if (person.address() == null) {
      return List.of();
    }
    List<String> lines = PostalLines.of(name(person), person.address(), home);
    return lines.subList(1, lines.size());
  }

  static String boxes(GiftOrder order, GiftLine line) {
    return line.count() + " × " + order.box(line).name();
  }
}
