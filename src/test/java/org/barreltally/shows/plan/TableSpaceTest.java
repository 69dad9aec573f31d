package org.barreltally.shows.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.barreltally.containers.Container;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.junit.jupiter.api.Test;

/** Worked by hand. */
class TableSpaceTest {

  /** Three tiers of 72 inches are 216; 15 % for display leaves 183.6. Each is 10 inches deep. */
  @Test
  void tiers_lengthen_the_shelf_and_share_its_depth() {
    TableSpace space = TableSpace.of(List.of(new TableSpace.Table(72, 30, 3)), 0.15);
    assertEquals(216, space.length(), 1e-9);
    assertEquals(183.6, space.lengthForJars(), 1e-9);
    assertEquals(2, space.deep(new Footprint(3.5, 3.5)));
    assertEquals(5, space.deep(new Footprint(2, 2)));
    assertEquals(0, space.deep(new Footprint(11, 11)));
  }

  /** 96 inches of 8 rows and 48 of 4 are 6.67 on average. */
  @Test
  void unlike_tables_count_by_their_length() {
    TableSpace space =
        TableSpace.of(List.of(new TableSpace.Table(96, 24, 1), new TableSpace.Table(48, 12, 1)), 0);
    assertEquals(6, space.deep(new Footprint(3, 3)));
  }

  /** A pint is 28.9 cubic inches inside; jugs of it are about 3 to 3.5 inches across. */
  @Test
  void the_room_of_a_jar_nobody_measured_is_like_that_of_a_real_one() {
    double across = Footprint.ofContents(473.2).width();
    assertTrue(across > 3 && across < 3.8, "across " + across);
  }

  /**
   * 628.0 g of syrup in a pint at 66.9 °Bx in air (UVM's 11.073 lb per gallon), and 300 g glass.
   */
  @Test
  void a_packed_jar_weighs_syrup_and_glass() {
    PackedJar known = PackedJar.of(pint(Quantity.of(300, Unit.G)));
    assertEquals(0.928, known.kg(), 0.001);
    assertEquals(0.628 * 1.58, PackedJar.of(pint(null)).kg(), 0.002);
    assertTrue(PackedJar.of(pint(null)).emptyIsGuessed());
  }

  private static Container pint(Quantity empty) {
    return new Container(
        "PT", "Pint", Quantity.of(16, Unit.FLOZ), null, empty, Container.Material.GLASS);
  }
}
