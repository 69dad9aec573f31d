package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Days;
import org.barreltally.recall.Finding;
import org.barreltally.recall.Findings;
import org.barreltally.recall.Holder;
import org.barreltally.settings.FarmSettings;

/** The letters of a recall, one to each holder known by name. */
@ApplicationScoped
public class RecallLetters {

  private final Finding finding;
  private final Containers containers;
  private final LabelSheets sheets;
  private final FarmSettings settings;
  private final Days days;

  RecallLetters(
      Finding finding,
      Containers containers,
      LabelSheets sheets,
      FarmSettings settings,
      Days days) {
    this.finding = finding;
    this.containers = containers;
    this.sheets = sheets;
    this.settings = settings;
    this.days = days;
  }

  /**
   * The letters as the book stands now.
   *
   * @param holder the number of one holder; null for all
   * @throws org.barreltally.recall.UnknownRecall if there is none of that id
   * @throws NobodyToWrite if nobody is known by name, or not that one
   */
  @Transactional
  public List<FormText> of(UUID id, Integer holder) {
    Findings found = finding.of(id);
    Maker maker = Maker.at(days.now(), settings);
    String sheet = maker.labelSheet() == null ? LabelSheet.USUAL : maker.labelSheet();
    Paper paper = sheets.named(sheet, "sheet").paper();
    RecallLetter letter = new RecallLetter(found.recall(), maker, days.today(), sizes()::get);
    List<Holder> holders =
        found.holders().stream().filter(h -> holder == null || h.number() == holder).toList();
    if (holders.isEmpty()) {
      throw new NobodyToWrite(id, holder);
    }
    return holders.stream().map(each -> letter.to(each, paper)).toList();
  }

  private Map<String, String> sizes() {
    return containers.list(null, Integer.MAX_VALUE).stream()
        .collect(Collectors.toMap(Container::code, Container::name));
  }
}
