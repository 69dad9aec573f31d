package org.barreltally.documents.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.LengthUnit;
import org.barreltally.documents.Paper;

/** The owner's label sheets in the database. */
@ApplicationScoped
public class SheetRows {

  private static final String INSERT =
      """
      INSERT INTO label_sheets (code, name, paper, unit, columns, rows, margin_left, margin_top,
        label_width, label_height, gap_across, gap_down)
      VALUES (:code, :name, :paper, :unit, :columns, :rows, :left, :top, :width, :height, :across, :down)
      ON CONFLICT (code) DO NOTHING
      """;

  private final EntityManager entities;

  SheetRows(EntityManager entities) {
    this.entities = entities;
  }

  /** False when the code is taken. */
  public boolean add(LabelSheet sheet) {
    return entities
            .createNativeQuery(INSERT)
            .setParameter("code", sheet.code())
            .setParameter("name", sheet.name())
            .setParameter("paper", sheet.paper().code())
            .setParameter("unit", sheet.unit().code())
            .setParameter("columns", sheet.columns())
            .setParameter("rows", sheet.rows())
            .setParameter("left", sheet.marginLeft())
            .setParameter("top", sheet.marginTop())
            .setParameter("width", sheet.labelWidth())
            .setParameter("height", sheet.labelHeight())
            .setParameter("across", sheet.gapAcross())
            .setParameter("down", sheet.gapDown())
            .executeUpdate()
        == 1;
  }

  public Optional<LabelSheet> find(String code) {
    return read("code = :code", code, 1).stream().findFirst();
  }

  /** By code, after a code, at most so many. */
  public List<LabelSheet> list(String after, int limit) {
    return read("code COLLATE \"C\" > :code", after, limit);
  }

  private List<LabelSheet> read(String condition, String code, int limit) {
    List<?> rows =
        entities
            .createNativeQuery(
                "SELECT * FROM label_sheets WHERE " + condition + " ORDER BY code COLLATE \"C\"",
                Tuple.class)
            .setParameter("code", code)
            .setMaxResults(limit)
            .getResultList();
    return rows.stream().map(Tuple.class::cast).map(SheetRows::sheet).toList();
  }

  private static LabelSheet sheet(Tuple row) {
    return new LabelSheet(
        row.get("code", String.class),
        row.get("name", String.class),
        Paper.valueOf(row.get("paper", String.class).toUpperCase(Locale.ROOT)),
        LengthUnit.valueOf(row.get("unit", String.class).toUpperCase(Locale.ROOT)),
        row.get("columns", Integer.class),
        row.get("rows", Integer.class),
        length(row, "margin_left"),
        length(row, "margin_top"),
        length(row, "label_width"),
        length(row, "label_height"),
        length(row, "gap_across"),
        length(row, "gap_down"));
  }

  /** As it was said: without the zeros that fill up the column. */
  private static BigDecimal length(Tuple row, String column) {
    BigDecimal stripped = row.get(column, BigDecimal.class).stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
