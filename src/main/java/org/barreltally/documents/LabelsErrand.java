package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.Set;
import org.barreltally.errands.ErrandKind;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Progress;
import org.barreltally.refusal.InvalidField;

/** Draws a large run of labels for somebody who does not wait for it. Records nothing. */
@ApplicationScoped
public class LabelsErrand implements ErrandKind<LabelsErrand.Asked> {

  /** Which labels; as for drawing them at once. */
  public record Asked(
      String lot,
      String container,
      Integer count,
      String sheet,
      Integer startAt,
      BigDecimal panelArea,
      String gtin,
      Boolean award) {}

  private final LotLabels labels;

  LabelsErrand(LotLabels labels) {
    this.labels = labels;
  }

  @Override
  public String code() {
    return "labels";
  }

  @Override
  public Class<Asked> record() {
    return Asked.class;
  }

  @Override
  public Set<String> roles() {
    return Set.of();
  }

  @Override
  public Outcome run(Asked asked, Progress progress) {
    if (asked.lot() == null || asked.lot().isBlank()) {
      throw new InvalidField("lot", "Say of which lot.");
    }
    LabelSheet on = labels.sheet(asked.sheet());
    SheetRun run = SheetRun.of(on, asked.startAt(), asked.count());
    LabelText text =
        labels.ofJar(
            asked.lot(),
            on,
            new JarLabel(
                asked.container(),
                asked.panelArea(),
                asked.gtin(),
                Boolean.TRUE.equals(asked.award())));
    return Outcome.pdf("labels-" + text.lot() + ".pdf", Papers.labels(text, run, progress));
  }
}
