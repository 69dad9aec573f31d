package org.barreltally.web.csv;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a list as CSV (RFC 4180): a row of headings, then a row for each item, lines ended by CR
 * and LF, in UTF-8.
 */
final class CsvTable implements StreamingOutput {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final ObjectMapper mapper;
  private final Listing listing;
  private final Object first;
  private final Parts parts;
  private final boolean marked;

  /**
   * @param first the part of the list that is there
   * @param parts the parts that follow it
   * @param marked whether a byte order mark comes first, by which spreadsheets know UTF-8; programs
   *     would take it for a part of the first heading
   */
  CsvTable(ObjectMapper mapper, Listing listing, Object first, Parts parts, boolean marked) {
    // digits as JSON has them, 28.00 for one
    this.mapper =
        mapper
            .copy()
            .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false)
            .setNodeFactory(JsonNodeFactory.withExactBigDecimals(true));
    this.listing = listing;
    this.first = first;
    this.parts = parts;
    this.marked = marked;
  }

  @Override
  public void write(OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    if (marked) {
      writer.write(BYTE_ORDER_MARK);
    }
    CSVPrinter rows = new CSVPrinter(writer, CSVFormat.RFC4180);
    List<Column> columns = Columns.of(listing.item(), mapper);
    rows.printRecord(columns.stream().map(Column::heading));
    for (Object part = first; part != null; part = following(part)) {
      for (Object item : listing.itemsOf(part)) {
        JsonNode json = mapper.valueToTree(item);
        rows.printRecord(columns.stream().map(column -> column.cell(json)));
      }
    }
    rows.flush();
  }

  private Object following(Object part) {
    String next = listing.nextOf(part);
    return next == null ? null : parts.following(next);
  }
}
