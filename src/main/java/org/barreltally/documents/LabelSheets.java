package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.documents.internal.SheetRows;
import org.barreltally.measure.ReferenceTable;
import org.barreltally.settings.LabelSheetRule;

/** The label sheets: those known at a fresh start, and the owner's. A sheet never changes. */
@ApplicationScoped
public class LabelSheets implements LabelSheetRule {

  private static final Map<String, LabelSheet> KNOWN = new TreeMap<>();

  static {
    ReferenceTable.rows("label_sheets.csv").stream()
        .map(LabelSheets::read)
        .forEach(sheet -> KNOWN.put(sheet.code(), sheet));
  }

  private final SheetRows rows;

  LabelSheets(SheetRows rows) {
    this.rows = rows;
  }

  /** The sheets of {@code db/reference/label_sheets.csv}, by code. */
  static List<LabelSheet> known() {
    return List.copyOf(KNOWN.values());
  }

  /**
   * The sheet an address names.
   *
   * @throws UnknownLabelSheet as not found
   */
  @Transactional
  public LabelSheet at(String code) {
    return find(code).orElseThrow(() -> new UnknownLabelSheet(code));
  }

  /**
   * The sheet a field names.
   *
   * @throws UnknownLabelSheet naming the field
   */
  @Transactional
  public LabelSheet named(String code, String field) {
    return find(code).orElseThrow(() -> new UnknownLabelSheet(code, field));
  }

  @Override
  @Transactional
  public void requireKnown(String code, String field) {
    named(code, field);
  }

  /** The paper of the maker's usual sheets, on which other papers are drawn as well. */
  public Paper usualPaper(Maker maker) {
    String sheet = maker.labelSheet() == null ? LabelSheet.USUAL : maker.labelSheet();
    return named(sheet, "sheet").paper();
  }

  /** Sheets by code, after a code (or null), at most so many. */
  @Transactional
  public List<LabelSheet> list(String after, int limit) {
    String from = after == null ? "" : after;
    return Stream.concat(
            KNOWN.values().stream().filter(sheet -> sheet.code().compareTo(from) > 0),
            rows.list(from, limit).stream())
        .sorted(Comparator.comparing(LabelSheet::code))
        .limit(limit)
        .toList();
  }

  /**
   * Adds a sheet.
   *
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   * @throws SheetDoesNotFitPaper if the labels reach over the edge of the paper
   * @throws SheetExists if the code is taken
   */
  @Transactional
  public LabelSheet add(LabelSheet said) {
    LabelSheetRules.check(said);
    if (KNOWN.containsKey(said.code()) || !rows.add(said)) {
      throw new SheetExists(said.code());
    }
    return said;
  }

  private Optional<LabelSheet> find(String code) {
    return Optional.ofNullable(KNOWN.get(code)).or(() -> rows.find(code));
  }

  private static LabelSheet read(CSVRecord row) {
    return new LabelSheet(
        row.get("code"),
        row.get("name"),
        Paper.valueOf(row.get("paper").toUpperCase(Locale.ROOT)),
        LengthUnit.valueOf(row.get("unit").toUpperCase(Locale.ROOT)),
        Integer.valueOf(row.get("columns")),
        Integer.valueOf(row.get("rows")),
        new BigDecimal(row.get("margin_left")),
        new BigDecimal(row.get("margin_top")),
        new BigDecimal(row.get("label_width")),
        new BigDecimal(row.get("label_height")),
        new BigDecimal(row.get("gap_across")),
        new BigDecimal(row.get("gap_down")));
  }
}
