package org.barreltally.keeping;

import java.time.Instant;
import java.util.List;

/**
 * What a backup says about itself, as {@code manifest.json} in the file.
 *
 * @param about for people who open the file without the tool
 * @param format always {@link #FORMAT}
 * @param formatVersion {@link #FORMAT_VERSION} of the tool that wrote it
 * @param applicationVersion of the tool that wrote it; for people only
 * @param schemaVersion the newest migration of the tables, for example 035
 * @param madeAt when it was made; the tables are as they stood at one moment about then
 * @param tables every table, by name
 * @param leftOut tables that are not in it
 * @param sequences where counters of the database stood
 */
public record Manifest(
    String about,
    String format,
    int formatVersion,
    String applicationVersion,
    String schemaVersion,
    Instant madeAt,
    List<Table> tables,
    List<String> leftOut,
    List<Sequence> sequences) {

  /** The name of the format. */
  public static final String FORMAT = "barreltally-backup";

  /** The newest version of the format that this tool reads and writes. */
  public static final int FORMAT_VERSION = 1;

  /** Where the manifest stands in the file. */
  public static final String ENTRY = "manifest.json";

  /** Sign-ins of browsers, which end with the installation; and what the migrations tell anew. */
  public static final List<String> LEFT_OUT = List.of("flyway_schema_history", "sessions");

  static final String ABOUT =
      "A backup of Barreltally. Each table is a CSV file (RFC 4180, UTF-8, first line: column"
          + " names) in the folder tables; an empty field without quotes is a missing value. sha256"
          + " and bytes are those of the CSV file as unpacked. Names and addresses of people are in"
          + " it: keep it as you keep the book itself.";

  /**
   * One table.
   *
   * @param columns in the order of the CSV file
   * @param rows without the line of column names
   * @param bytes of the CSV file
   * @param sha256 of the CSV file, in hexadecimal digits
   */
  public record Table(String name, List<String> columns, long rows, long bytes, String sha256) {

    /** Where the table's CSV file stands in the backup. */
    public String entry() {
      return "tables/" + name + ".csv";
    }
  }

  /**
   * A counter of the database.
   *
   * @param last the last number it gave; null if it gave none
   */
  public record Sequence(String name, Long last) {}

  /** Rows of all tables together. */
  public long rows() {
    return tables.stream().mapToLong(Table::rows).sum();
  }
}
