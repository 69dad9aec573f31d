package org.barreltally.reconciliation.pages;

import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.barreltally.canning.PackSheet;
import org.barreltally.canning.RunsShrink;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;

/**
 * What canning runs lost, by cause, as bars. In units of the drawing, 600 wide.
 *
 * @param runs how many runs
 * @param total of all causes
 */
@TemplateData
public record ShrinkBars(int runs, Quantity total, List<Bar> bars) {

  private static final double LONGEST = 330;
  private static final int STEP = 34;

  /**
   * @param cause {@code filter, overfill, broken, unexplained}
   * @param volume at 68 °F; of the unexplained below zero where runs gave more than they took
   */
  @TemplateData
  public record Bar(String cause, Quantity volume, int y, int length) {

    public int textY() {
      return y + 17;
    }

    public int valueX() {
      return 160 + length + 8;
    }
  }

  static ShrinkBars of(RunsShrink lost) {
    PackSheet.Causes causes = lost.byCause();
    List<String> names = List.of("filter", "overfill", "broken", "unexplained");
    List<Double> sums =
        Stream.of(causes.filter(), causes.overfill(), causes.broken(), causes.unexplained())
            .map(volume -> volume.doubleIn(Unit.GAL))
            .toList();
    double most = sums.stream().mapToDouble(Math::abs).max().orElse(0);
    List<Bar> bars =
        IntStream.range(0, names.size())
            .mapToObj(
                n ->
                    new Bar(
                        names.get(n),
                        gallons(sums.get(n)),
                        n * STEP + 4,
                        most == 0 ? 0 : (int) Math.round(Math.abs(sums.get(n)) / most * LONGEST)))
            .toList();
    return new ShrinkBars(
        lost.runs(), gallons(sums.stream().mapToDouble(Double::doubleValue).sum()), bars);
  }

  private static Quantity gallons(double gallons) {
    return Quantity.rounded(gallons, Unit.GAL, 3);
  }
}
