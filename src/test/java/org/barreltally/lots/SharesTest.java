package org.barreltally.lots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Expected shares are worked out by hand: along a path they multiply, over paths they add. */
class SharesTest {

  private static final double EXACT = 1e-12;

  @Test
  void a_lot_made_of_nothing_has_no_ancestors() {
    assertEquals(Map.of(), Shares.ofAncestors("A", List.of()));
  }

  @Test
  void over_two_paths_shares_add() {
    List<Parent> diamond =
        List.of(
            link("jars", "left", 0.25),
            link("jars", "right", 0.75),
            link("left", "barrel", 0.4),
            link("left", "other", 0.6),
            link("right", "barrel", 1));
    Map<String, Double> shares = Shares.ofAncestors("jars", diamond);
    assertEquals(0.25, shares.get("left"), EXACT);
    assertEquals(0.25 * 0.4 + 0.75, shares.get("barrel"), EXACT);
    assertEquals(0.25 * 0.6, shares.get("other"), EXACT);
    assertEquals(4, shares.size());
  }

  @Test
  void a_parent_that_is_a_grandparent_too_counts_both_ways_whatever_the_order_of_the_links() {
    List<Parent> links =
        new ArrayList<>(
            List.of(
                link("jars", "barrel", 0.5), link("jars", "heel", 0.5), link("heel", "barrel", 1)));
    Random random = new Random(20240314);
    for (int i = 0; i < 20; i++) {
      Collections.shuffle(links, random);
      assertEquals(1, Shares.ofAncestors("jars", links).get("barrel"), EXACT);
      assertEquals(1, Shares.inDescendants("barrel", links).get("jars"), EXACT);
    }
  }

  @Test
  void downwards_a_share_is_of_the_descendant_and_not_of_the_lot() {
    List<Parent> below =
        List.of(
            link("small", "barrel", 1), link("large", "barrel", 0.1), link("last", "large", 0.5));
    Map<String, Double> shares = Shares.inDescendants("barrel", below);
    assertEquals(Map.of("small", 1.0, "large", 0.1, "last", 0.05), rounded(shares));
  }

  @Test
  void a_link_by_an_unwashed_vessel_alone_is_followed_with_no_share() {
    List<Parent> links =
        List.of(
            new Parent("jars", "barrel", 1000, 1),
            new Parent("jars", "film", 0, 0),
            new Parent("film", "old", 500, 1));
    Map<String, Double> shares = Shares.ofAncestors("jars", links);
    assertEquals(0, shares.get("film"), 0);
    assertEquals(0, shares.get("old"), 0);
    assertEquals(1, shares.get("barrel"), EXACT);
    assertEquals(0, Shares.inDescendants("old", links.subList(1, 3)).get("jars"), 0);
  }

  @Test
  void sixty_heels_each_over_two_paths_are_walked_once_per_lot() {
    List<Parent> links = new ArrayList<>();
    for (int run = 60; run > 0; run--) {
      links.add(link("run" + run, "left" + run, 0.5));
      links.add(link("run" + run, "right" + run, 0.5));
      links.add(link("left" + run, "run" + (run - 1), 0.2));
      links.add(link("left" + run, "fresh" + run, 0.8));
      links.add(link("right" + run, "run" + (run - 1), 0.2));
      links.add(link("right" + run, "fresh" + run, 0.8));
    }
    List<Parent> below = links.stream().filter(link -> !link.parent().startsWith("fresh")).toList();
    // 2^60 paths: walking them would take longer than anybody lives, so any limit will do.
    assertTimeoutPreemptively(
        Duration.ofSeconds(60),
        () -> {
          Map<String, Double> up = Shares.ofAncestors("run60", links);
          assertEquals(Math.pow(0.2, 60), up.get("run0"), 1e-50);
          assertEquals(0.8, up.get("fresh60"), EXACT);
          assertEquals(0.8 * 0.2, up.get("fresh59"), EXACT);
          assertEquals(
              1,
              up.get("run0")
                  + up.entrySet().stream()
                      .filter(e -> e.getKey().startsWith("fresh"))
                      .mapToDouble(Map.Entry::getValue)
                      .sum(),
              EXACT);
          assertEquals(Math.pow(0.2, 60), Shares.inDescendants("run0", below).get("run60"), 1e-50);
        });
  }

  private static Parent link(String child, String parent, double share) {
    return new Parent(child, parent, Math.round(1e6 * share), share);
  }

  private static Map<String, Double> rounded(Map<String, Double> shares) {
    Map<String, Double> rounded = new HashMap<>();
    shares.forEach((lot, share) -> rounded.put(lot, Math.round(share * 1e12) / 1e12));
    return rounded;
  }
}
