package org.barreltally.keeping.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.HexFormat;
import org.postgresql.PGConnection;
import org.postgresql.copy.CopyOut;

/** A table's CSV as it leaves PostgreSQL or comes out of a file, counted and summed on its way. */
final class Csv {

  private static final int BUFFER_BYTES = 1 << 16;

  /**
   * What passed.
   *
   * @param rows without the line of column names; -1 if not even that line was there
   */
  record Sum(long rows, long bytes, String sha256) {}

  private Csv() {}

  /**
   * Writes all rows of a table. Each message of PostgreSQL's COPY is one row (PostgreSQL
   * documentation, frontend/backend protocol, COPY operations) and ends with a line feed, which
   * becomes CR LF as RFC 4180 has it; line ends inside quotes stay as they are.
   */
  static Sum write(Connection connection, BookTable table, OutputStream target)
      throws SQLException, IOException {
    MessageDigest digest = sha256();
    CopyOut copy = connection.unwrap(PGConnection.class).getCopyAPI().copyOut(table.copyOut());
    long rows = -1;
    long bytes = 0;
    try {
      for (byte[] row = copy.readFromCopy(); row != null; row = copy.readFromCopy()) {
        byte[] line = withCrLf(row);
        digest.update(line);
        target.write(line);
        bytes += line.length;
        rows++;
      }
    } finally {
      if (copy.isActive()) {
        copy.cancelCopy();
      }
    }
    return new Sum(rows, bytes, HexFormat.of().formatHex(digest.digest()));
  }

  private static byte[] withCrLf(byte[] row) {
    byte[] line = java.util.Arrays.copyOf(row, row.length + 1);
    line[row.length - 1] = '\r';
    line[row.length] = '\n';
    return line;
  }

  /**
   * Reads a CSV to its end, at most so many bytes and one more: whoever compares sees that there
   * was too much.
   */
  static Sum read(InputStream source, long bytesMax) throws IOException {
    MessageDigest digest = sha256();
    byte[] buffer = new byte[BUFFER_BYTES];
    long rows = -1;
    long bytes = 0;
    boolean quoted = false;
    while (bytes <= bytesMax) {
      int read = source.read(buffer);
      if (read < 0) {
        break;
      }
      digest.update(buffer, 0, read);
      bytes += read;
      for (int n = 0; n < read; n++) {
        if (buffer[n] == '"') {
          quoted = !quoted; // a doubled quote turns it twice
        } else if (buffer[n] == '\n' && !quoted) {
          rows++;
        }
      }
    }
    return new Sum(rows, bytes, HexFormat.of().formatHex(digest.digest()));
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
