package org.barreltally.keeping;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** A backup taken apart, to be put together again in another way than it was. */
final class Forged {

  private static final ObjectMapper JSON = new ObjectMapper();

  final Map<String, byte[]> entries = new LinkedHashMap<>();
  ObjectNode manifest;

  private Forged() {}

  static Forged from(Path backup) throws IOException {
    Forged forged = new Forged();
    try (ZipFile zip = new ZipFile(backup.toFile())) {
      for (ZipEntry entry : zip.stream().toList()) {
        forged.entries.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
      }
    }
    forged.manifest = (ObjectNode) JSON.readTree(forged.entries.remove("manifest.json"));
    return forged;
  }

  String csv(String table) {
    return new String(entries.get("tables/" + table + ".csv"), StandardCharsets.UTF_8);
  }

  /** Changes a table and leaves the manifest as it was. */
  Forged change(String table, UnaryOperator<String> change) {
    entries.put(
        "tables/" + table + ".csv", change.apply(csv(table)).getBytes(StandardCharsets.UTF_8));
    return this;
  }

  /** Changes a table and makes the manifest fit, as somebody would who knows how. */
  Forged changeAndSign(String table, UnaryOperator<String> change) {
    change(table, change);
    byte[] csv = entries.get("tables/" + table + ".csv");
    ObjectNode said = table(table);
    said.put("bytes", csv.length);
    said.put("sha256", sha256(csv));
    said.put("rows", csv(table).split("\r\n").length - 1);
    return this;
  }

  ObjectNode table(String name) {
    for (var table : manifest.get("tables")) {
      if (table.get("name").asText().equals(name)) {
        return (ObjectNode) table;
      }
    }
    throw new AssertionError("no table " + name);
  }

  /** Adds a table with its line of column names and no rows. */
  Forged add(String table) {
    byte[] csv = "id\r\n".getBytes(StandardCharsets.UTF_8);
    entries.put("tables/" + table + ".csv", csv);
    ObjectNode said = ((ArrayNode) manifest.get("tables")).addObject();
    said.put("name", table);
    said.putArray("columns").add("id");
    said.put("rows", 0).put("bytes", csv.length).put("sha256", sha256(csv));
    return this;
  }

  /** Takes a table out of the file and out of the manifest. */
  Forged remove(String table) {
    entries.remove("tables/" + table + ".csv");
    ArrayNode tables = (ArrayNode) manifest.get("tables");
    for (int n = 0; n < tables.size(); n++) {
      if (tables.get(n).get("name").asText().equals(table)) {
        tables.remove(n);
        return this;
      }
    }
    throw new AssertionError("no table " + table);
  }

  static String sha256(byte[] text) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  Path write(Path target) throws IOException {
    return write(target, JSON.writeValueAsBytes(manifest));
  }

  Path write(Path target, byte[] manifestText) throws IOException {
    try (OutputStream out = Files.newOutputStream(target);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        zip.putNextEntry(new ZipEntry(entry.getKey()));
        zip.write(entry.getValue());
        zip.closeEntry();
      }
      if (manifestText != null) {
        zip.putNextEntry(new ZipEntry("manifest.json"));
        zip.write(manifestText);
        zip.closeEntry();
      }
    }
    return target;
  }
}
