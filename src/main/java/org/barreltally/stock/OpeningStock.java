package org.barreltally.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.errands.Progress;
import org.barreltally.lots.Lots;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.stock.internal.Cells;
import org.barreltally.stock.internal.Column;
import org.barreltally.stock.internal.LotCodes;
import org.barreltally.stock.internal.OpeningFile;

/**
 * Enters what was there before the book began, from a file of comma-separated values (RFC 4180,
 * UTF-8) with a header row. The columns may stand in any order and those not needed may be left
 * out:
 *
 * <table>
 * <caption>Columns</caption>
 * <tr><td>kind</td><td>{@code barrel} or {@code jars}: what the row is</td></tr>
 * <tr><td>lot</td><td>its code on tag or label; of a barrel it may be empty</td></tr>
 * <tr><td>season</td><td>crop year; of jars there may be several: {@code 2024 2025}</td></tr>
 * <tr><td>brix</td><td>density reading: {@code 66.9}, or with its unit {@code 36 Baume}. Jars may
 * leave it empty; then it is taken to be within the limits of the jurisdiction</td></tr>
 * <tr><td>brixAt</td><td>temperature of the syrup when it was read: {@code 70 degF}; if empty,
 * 68 °F</td></tr>
 * <tr><td>instrument</td><td>{@code hydrometer} or {@code refractometer}; if empty, the
 * latter</td></tr>
 * <tr><td>reference</td><td>temperature for which the instrument is made; if empty, 68 °F</td></tr>
 * <tr><td>transmittance</td><td>%Tc, 0 to 100; a barrel without it is held</td></tr>
 * <tr><td>taste</td><td>{@code clean}, {@code buddy}, …; a barrel without it is held</td></tr>
 * <tr><td>tag</td><td>of a barrel</td></tr>
 * <tr><td>filledOn</td><td>of a barrel: {@code 2025-03-20}</td></tr>
 * <tr><td>material</td><td>of a barrel: {@code stainless}, …</td></tr>
 * <tr><td>capacity</td><td>of a barrel, to the brim: {@code 40 gal}; may be empty</td></tr>
 * <tr><td>gross, tare</td><td>of a barrel, on the scale: {@code 486.5 lb}, {@code 42 lb}</td></tr>
 * <tr><td>dip, dipAt</td><td>of a barrel, instead of the scale or beside it: {@code 40 gal},
 * {@code 68 degF}</td></tr>
 * <tr><td>place</td><td>where the jars stand: {@code cool-room}</td></tr>
 * <tr><td>container</td><td>of jars: {@code PT}</td></tr>
 * <tr><td>count</td><td>of jars: pieces</td></tr>
 * <tr><td>packedOn</td><td>of jars: {@code 2025-06-20}</td></tr>
 * </table>
 */
@ApplicationScoped
public class OpeningStock {

  /** So many rows are written before Hibernate may forget them. */
  private static final int ROWS_AT_ONCE = 50;

  private final OpeningBarrels barrels;
  private final OpeningJarRows jarRows;
  private final OpeningJars jars;
  private final Lots lots;
  private final EntityManager entities;

  OpeningStock(
      OpeningBarrels barrels,
      OpeningJarRows jarRows,
      OpeningJars jars,
      Lots lots,
      EntityManager entities) {
    this.barrels = barrels;
    this.jarRows = jarRows;
    this.jars = jars;
    this.lots = lots;
    this.entities = entities;
  }

  /**
   * Enters all rows, or none.
   *
   * @return the lots made, barrels in the order of the file, then jars by lot
   * @throws BrokenCsv if the file cannot be read
   * @throws InvalidField naming everything that needs mending by line and column
   */
  @Transactional
  public List<OpenedLot> enter(byte[] file) {
    return enter(file, Progress.UNWATCHED);
  }

  /** As {@link #enter(byte[])}; {@code progress} is told of the rows. */
  @Transactional
  public List<OpenedLot> enter(byte[] file, Progress progress) {
    List<Cells> rows = OpeningFile.read(file);
    progress.of(rows.size());
    LotCodes codes = new LotCodes(code -> lots.find(code).isPresent());
    OpeningBarrels.Reading barrelsRead = barrels.reading(codes);
    OpeningJarRows.Reading jarsRead = jarRows.reading(codes);
    List<OpeningBarrels.Row> filled = new ArrayList<>();
    for (Cells row : rows) {
      String kind = row.text(Column.KIND);
      if ("barrel".equals(kind)) {
        filled.add(barrelsRead.read(row));
      } else if ("jars".equals(kind)) {
        jarsRead.read(row);
      } else {
        row.wrong(Column.KIND, "Give barrel or jars.");
      }
    }
    List<FieldError> errors = rows.stream().flatMap(row -> row.errors().stream()).toList();
    if (!errors.isEmpty()) {
      throw new InvalidField(errors);
    }
    List<OpenedLot> opened = new ArrayList<>();
    for (OpeningBarrels.Row row : filled) {
      opened.add(barrels.enter(row));
      progress.done(1);
      if (opened.size() % ROWS_AT_ONCE == 0) {
        entities.flush();
        entities.clear();
      }
    }
    opened.addAll(jars.enter(jarsRead.byLot()));
    return opened;
  }
}
