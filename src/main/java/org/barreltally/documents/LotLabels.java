package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barreltally.canning.ProcessingGradeTooSmall;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.ledger.Items;
import org.barreltally.lots.AwardsOfLots;
import org.barreltally.lots.Lot;
import org.barreltally.lots.LotAward;
import org.barreltally.lots.LotHeld;
import org.barreltally.lots.Lots;
import org.barreltally.lots.NotGraded;
import org.barreltally.measure.ColorClass;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;

/** What stands on the labels of a lot's jars and of cases of them. */
@ApplicationScoped
public class LotLabels {

  private static final String PRODUCT = "Pure maple syrup";
  private static final int JARS_MAX = 1000;
  private static final BigDecimal LARGEST_PANEL = BigDecimal.valueOf(5000);

  private final Lots lots;
  private final Items items;
  private final Containers containers;
  private final AwardsOfLots awards;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  LotLabels(
      Lots lots,
      Items items,
      Containers containers,
      AwardsOfLots awards,
      LabelSheets sheets,
      FarmSettings settings,
      Days days) {
    this.lots = lots;
    this.items = items;
    this.containers = containers;
    this.awards = awards;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The sheet a request names, or the owner's, or the usual one.
   *
   * @throws UnknownLabelSheet naming sheet
   */
  public LabelSheet sheet(String code) {
    String owners = Maker.at(days.now(), settings).labelSheet();
    String usual = owners == null ? LabelSheet.USUAL : owners;
    return sheets.named(code == null ? usual : code, "sheet");
  }

  /**
   * The label of a jar, as it is printed now.
   *
   * @throws LotHeld if the lot is held
   * @throws NotGraded if it has no grade
   * @throws NotPackedInContainer if it has no such jars
   * @throws NoRibbonYet if a ribbon is wanted and none is known
   */
  @Transactional
  public LabelText ofJar(String lot, LabelSheet sheet, JarLabel wanted) {
    Container size = size(wanted.container());
    Lot packed = printable(lot, size);
    BigDecimal panel = wanted.panelArea();
    if (panel != null && (panel.signum() <= 0 || panel.compareTo(LARGEST_PANEL) > 0)) {
      throw new InvalidField(
          "panelArea",
          "Give the area of the principal display panel in square inches, more than 0 and at most "
              + LARGEST_PANEL
              + ".");
    }
    double inches =
        panel == null ? TypeHeight.guessedPanel(size.netContents()) : panel.doubleValue();
    double least = TypeHeight.least(Math.max(inches, sheet.squareInches()));
    Maker maker = Maker.at(days.now(), settings);
    return text(
        packed,
        maker,
        NetContents.ways(size.netContents(), maker.habit()),
        least,
        Gtin.of(wanted.gtin()),
        wanted.award() ? ribbon(lot, size) : null);
  }

  /** The newest ribbon that this lot won, in this size or in none that was named. */
  private String ribbon(String lot, Container size) {
    return awards.of(lot).stream()
        .filter(won -> won.words() != null)
        .filter(won -> won.container() == null || won.container().equals(size.code()))
        .map(LotAward::words)
        .findFirst()
        .orElseThrow(() -> new NoRibbonYet(lot, size.code()));
  }

  /**
   * The label of a case, as it is printed now.
   *
   * @param perCase jars in it, 1 to 1000
   * @param gtin the owner's number of such a case; may be null
   * @throws LotHeld and the other refusals of {@link #ofJar}
   */
  @Transactional
  public LabelText ofCase(
      String lot, String container, LabelSheet sheet, Integer perCase, String gtin) {
    Container size = size(container);
    Lot packed = printable(lot, size);
    if (perCase == null || perCase < 1 || perCase > JARS_MAX) {
      throw new InvalidField(
          "perCase", "Say how many jars are in a case, a whole number from 1 to " + JARS_MAX + ".");
    }
    Maker maker = Maker.at(days.now(), settings);
    List<String> ways =
        NetContents.ways(size.netContents(), maker.habit()).stream()
            .map(way -> String.format(Locale.ROOT, "%d × %s", perCase, way))
            .toList();
    return text(packed, maker, ways, TypeHeight.least(sheet.squareInches()), Gtin.of(gtin), null);
  }

  private Container size(String container) {
    if (container == null || container.isBlank()) {
      throw new InvalidField("container", "Say which size, for example PT.");
    }
    return containers.named(container, "container");
  }

  private Lot printable(String code, Container size) {
    Lot lot = lots.at(code);
    if (lot.held()) {
      throw new LotHeld(code, "lot");
    }
    if (lot.grade() == null) {
      throw new NotGraded(code);
    }
    if (items.jarsOf(code, size.code()).isEmpty()) {
      throw new NotPackedInContainer(code, size.code());
    }
    if (lot.grade() == ColorClass.PROCESSING && !size.takesProcessingGrade()) {
      throw new ProcessingGradeTooSmall(size, "container");
    }
    return lot;
  }

  private static LabelText text(
      Lot lot,
      Maker maker,
      List<String> netContents,
      double leastHeight,
      Gtin gtin,
      String ribbon) {
    List<String> facts = new ArrayList<>(List.of("Lot " + lot.code(), "Packed " + lot.madeOn()));
    if (maker.bestByMonths() != null) {
      facts.add("Best by " + lot.madeOn().plusMonths(maker.bestByMonths()));
    }
    if (gtin != null) {
      facts.add("GTIN " + gtin.digits());
    }
    if (ribbon != null) {
      facts.add(ribbon);
    }
    return new LabelText(
        PRODUCT,
        lot.grade().words(),
        netContents,
        leastHeight,
        maker.name(),
        maker.address(),
        facts,
        lot.code(),
        gtin == null ? null : gtin.digits(),
        maker.lotAddress(lot.code()));
  }
}
