package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.barreltally.errands.ErrandKind;
import org.barreltally.errands.Outcome;
import org.barreltally.errands.Progress;
import org.barreltally.refusal.InvalidField;

/** Enters opening stock from a file for somebody who does not wait for it. */
@ApplicationScoped
public class OpeningStockErrand implements ErrandKind<OpeningStockErrand.Asked> {

  /**
   * What is entered.
   *
   * @param file the text of the CSV file
   */
  public record Asked(String file) {}

  private final OpeningStock opening;

  OpeningStockErrand(OpeningStock opening) {
    this.opening = opening;
  }

  @Override
  public String code() {
    return "opening-stock";
  }

  @Override
  public Class<Asked> record() {
    return Asked.class;
  }

  @Override
  public Set<String> roles() {
    return Set.of("owner", "canning");
  }

  @Override
  public Outcome run(Asked asked, Progress progress) {
    if (asked.file() == null || asked.file().isBlank()) {
      throw new InvalidField("file", "Choose the CSV file.");
    }
    opening.enter(asked.file().getBytes(StandardCharsets.UTF_8), progress);
    return Outcome.at("/stock");
  }
}
