package org.barreltally.canning.pages;

import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barreltally.canning.PackSheet;
import org.barreltally.measure.Quantity;
import org.barreltally.web.pages.Words;

/**
 * Shrink by cause as bars, in units of the drawing, 400 wide. What is below zero, which only the
 * unexplained can be, goes to the left of the line of nothing.
 *
 * @param zero where the line of nothing stands
 */
@TemplateData
public record ShrinkBars(List<Bar> bars, double zero, int height) {

  private static final int WIDTH = 400;
  private static final int ROW = 46;
  private static final int LEAST_SEEN = 2;

  /**
   * @param code of the cause
   * @param percent of what came in
   */
  @TemplateData
  public record Bar(
      String code,
      String words,
      Quantity volume,
      BigDecimal percent,
      double x,
      double width,
      int textY,
      int barY) {}

  static ShrinkBars of(PackSheet.Shrink shrink) {
    Map<String, Quantity> causes = new LinkedHashMap<>();
    causes.put("filter", shrink.byCause().filter());
    causes.put("overfill", shrink.byCause().overfill());
    causes.put("broken", shrink.byCause().broken());
    causes.put("unexplained", shrink.byCause().unexplained());
    double most = 0;
    double least = 0;
    for (Quantity volume : causes.values()) {
      most = Math.max(most, volume.value().doubleValue());
      least = Math.min(least, volume.value().doubleValue());
    }
    double scale = most - least == 0 ? 0 : WIDTH / (most - least);
    double zero = -least * scale;
    List<Bar> bars = new ArrayList<>();
    for (Map.Entry<String, Quantity> cause : causes.entrySet()) {
      double value = cause.getValue().value().doubleValue();
      double width = value == 0 ? 0 : Math.max(LEAST_SEEN, Math.abs(value) * scale);
      int top = bars.size() * ROW;
      bars.add(
          new Bar(
              cause.getKey(),
              Words.of("canning.cause." + cause.getKey()),
              cause.getValue(),
              percent(cause.getValue(), shrink),
              tenth(value < 0 ? zero - width : Math.min(zero, WIDTH - width)),
              tenth(width),
              top + 18,
              top + 24));
    }
    return new ShrinkBars(List.copyOf(bars), tenth(zero), bars.size() * ROW);
  }

  /** The whole shrink is given in both, so a part of it is the same part of its percent. */
  private static BigDecimal percent(Quantity part, PackSheet.Shrink shrink) {
    BigDecimal whole = shrink.volumeAt68F().value();
    return whole.signum() == 0
        ? null
        : part.value().multiply(shrink.percent()).divide(whole, 2, RoundingMode.HALF_UP);
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
