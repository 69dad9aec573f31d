package org.barreltally.documents;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.barreltally.containers.Containers;
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

  private final Containers containers;
  private final Map<String, String> sizes = new HashMap<>();

  GiftWords(Containers containers) {
    this.containers = containers;
  }

  /** {@code Half-pint jug, Golden, delicate taste}. */
  String of(Jar jar) {
    return size(jar.container()) + ", " + jar.grade().words();
  }

  String size(String container) {
    return sizes.computeIfAbsent(container, code -> containers.at(code).name());
  }

  /** Jars by size and grade, and where one is in another's stead. */
  List<String> contents(GiftOrder order, GiftLine line) {
    return GiftOutcome.contents(order, line).stream().map(this::content).toList();
  }

  String content(Allotted jars) {
    String words = jars.pieces() + " × " + of(jars.jar());
    return jars.substitute() ? words + " (in place of " + of(jars.wanted()) + ")" : words;
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

  /** The address in one line; empty where there is none. */
  static List<String> address(Person person, String home) {
    return person.address() == null
        ? List.of()
        : PostalLines.of(name(person), person.address(), home)
            .subList(1, PostalLines.of(name(person), person.address(), home).size());
  }

  static String boxes(GiftOrder order, GiftLine line) {
    return line.count() + " × " + order.box(line).name();
  }
}
