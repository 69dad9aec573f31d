package org.barreltally.shows;

import java.util.ArrayList;
import java.util.List;

/**
 * Something that was taken as a fact and does not fit with the rest.
 *
 * @param code never-packed-out, more-than-came, below-zero or drawer-does-not-add-up
 * @param container null where it is not about jars
 * @param lot null where it is not about a lot
 */
public record LookAt(String code, String container, String lot, String reason) {

  /** What does not fit at a table and in its drawers, as the book stands now. */
  static List<LookAt> at(List<TableLine> lines, List<DrawerCount> newest) {
    List<LookAt> found = new ArrayList<>();
    lines.forEach(line -> at(line, found));
    newest.stream()
        .filter(drawer -> drawer.finding() != null)
        .forEach(
            drawer ->
                found.add(new LookAt("drawer-does-not-add-up", null, null, drawer.finding())));
    return found;
  }

  private static void at(TableLine line, List<LookAt> found) {
    long came = line.packedOut() + line.received() + Math.max(0, line.otherwise());
    if (line.lot() != null && came == 0 && line.leftUnsold() > 0) {
      found.add(
          new LookAt(
              "never-packed-out",
              line.container(),
              line.lot(),
              "%d × %s of lot %s left the table and none was packed out to it. Look at the label, or record the pack-out."
                  .formatted(line.leftUnsold(), line.container(), line.lot())));
    } else if (line.lot() != null && line.leftUnsold() > came) {
      found.add(
          new LookAt(
              "more-than-came",
              line.container(),
              line.lot(),
              "%d × %s of lot %s left the table unsold, but only %d came to it. Count again."
                  .formatted(line.leftUnsold(), line.container(), line.lot(), came)));
    } else if (line.lot() != null && line.onTable() < 0) {
      found.add(
          new LookAt(
              "below-zero",
              line.container(),
              line.lot(),
              "%d × %s of lot %s were sold beyond what came to the table. Count what is left."
                  .formatted(-line.onTable(), line.container(), line.lot())));
    }
  }
}
