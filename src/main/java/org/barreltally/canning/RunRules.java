package org.barreltally.canning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barreltally.barrels.Draw;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Dimension;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;
import org.barreltally.settings.FarmSettings;

/** What keeps a run from being stored; in a what-if the same is said as a caution. */
@ApplicationScoped
class RunRules {

  static final String HOT_SYRUP =
      "Hot syrup scalds in an instant and clings: gloves, apron, closed shoes, no children at the"
          + " canner. Warm the glass first. Never open a filter press under pressure.";

  private static final double BOILING_CELSIUS = 100;

  private final FarmSettings settings;

  RunRules(FarmSettings settings) {
    this.settings = settings;
  }

  /**
   * The temperature at filling, given and possible.
   *
   * @throws InvalidField if it is missing, no temperature, or beyond what syrup is filled at
   */
  static Quantity fillTemperature(Quantity temperature) {
    if (temperature == null) {
      throw new InvalidField(
          "fillTemperature",
          "Give the temperature of the syrup at filling: volume changes with it.");
    }
    if (temperature.unit().dimension() != Dimension.TEMPERATURE) {
      throw new InvalidField("fillTemperature.unit", "Give the temperature in degF or degC.");
    }
    double celsius = temperature.doubleIn(Unit.DEGC);
    if (celsius < 0 || celsius > BOILING_CELSIUS) {
      throw new InvalidField(
          "fillTemperature", "Syrup is filled between 32 and 212 °F (0 and 100 °C).");
    }
    return temperature;
  }

  /** Refuses a run that breaks a rule; the release reason covers temperature and density alone. */
  void check(CanningOrder order, Reckoning reckoning, ColorClass grade) {
    processing(reckoning, grade).ifPresent(RunRules::refuse);
    if (order.releaseReason() != null && !order.releaseReason().isBlank()) {
      return;
    }
    temperature(reckoning).ifPresent(RunRules::refuse);
    density(reckoning).ifPresent(RunRules::refuse);
  }

  private static void refuse(Refusal refusal) {
    throw refusal;
  }

  /** What stands on the sheet to be minded. */
  List<String> cautions(Reckoning reckoning, ColorClass grade) {
    List<String> cautions = new ArrayList<>();
    cautions.add(HOT_SYRUP);
    processing(reckoning, grade).map(Refusal::detail).ifPresent(cautions::add);
    temperature(reckoning).map(Refusal::detail).ifPresent(cautions::add);
    density(reckoning).map(Refusal::detail).ifPresent(cautions::add);
    reckoning.fills().stream()
        .flatMap(fill -> brim(reckoning, fill).stream())
        .forEach(cautions::add);
    reckoning.batch().draws().stream()
        .flatMap(draw -> draw.from().material().caution().stream())
        .distinct()
        .forEach(cautions::add);
    return cautions;
  }

  private Optional<Refusal> processing(Reckoning reckoning, ColorClass grade) {
    Optional<Integer> drawn = processingDraw(reckoning.batch().draws());
    if (grade != ColorClass.PROCESSING && drawn.isEmpty()) {
      return Optional.empty();
    }
    for (int i = 0; i < reckoning.fills().size(); i++) {
      var container = reckoning.fills().get(i).container();
      if (!container.takesProcessingGrade()) {
        String field = "fills[" + i + "].container";
        return Optional.of(
            grade == ColorClass.PROCESSING
                ? new ProcessingGradeTooSmall(container, field)
                : new ProcessingGradeTooSmall(
                    container,
                    reckoning.batch().draws().get(drawn.get()).from().tag(),
                    "draws[" + drawn.get() + "]"));
      }
    }
    return Optional.empty();
  }

  private static Optional<Integer> processingDraw(List<Draw> draws) {
    for (int i = 0; i < draws.size(); i++) {
      if (draws.get(i).from().lot().grade() == ColorClass.PROCESSING) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private Optional<Refusal> temperature(Reckoning reckoning) {
    Quantity least = settings.cappingTemperature();
    Quantity filled = reckoning.fillTemperature();
    return filled.in(Unit.DEGC).compareTo(least.in(Unit.DEGC)) >= 0
        ? Optional.empty()
        : Optional.of(new BelowCappingTemperature(filled, least));
  }

  private Optional<Refusal> density(Reckoning reckoning) {
    double brix = reckoning.batch().brix().value();
    return settings.jurisdiction().densityWithin(brix)
        ? Optional.empty()
        : Optional.of(new DensityOffLimits(brix, settings.jurisdiction()));
  }

  /** Hot syrup takes more room than it will when cold; a shaped jar may not have it. */
  private static Optional<String> brim(Reckoning reckoning, Fill fill) {
    Quantity brimful = fill.container().brimful();
    if (brimful == null) {
      return Optional.empty();
    }
    double hot =
        reckoning
            .batch()
            .syrup()
            .mLAt(
                fill.gramsEach() + fill.overfillGrams(),
                reckoning.fillTemperature().doubleIn(Unit.DEGC));
    return hot <= brimful.doubleIn(Unit.ML)
        ? Optional.empty()
        : Optional.of(
            "%s takes %s to the brim; its contents need %s at %s. Take a larger jar or put less in; do not fill cooler."
                .formatted(
                    fill.container().code(),
                    brimful,
                    Quantity.rounded(hot, Unit.ML, 0),
                    reckoning.fillTemperature()));
  }
}
