package org.barreltally.keeping.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.barreltally.keeping.BackupDamaged;
import org.barreltally.keeping.BackupTooNew;
import org.barreltally.keeping.Manifest;
import org.barreltally.keeping.NotABackup;

/** The manifest as JSON, and what it must say to be believed. */
final class ManifestJson {

  private static final Pattern NAME = Pattern.compile("[a-z_][a-z0-9_]{0,62}");
  private static final Pattern VERSION = Pattern.compile("[0-9]{1,9}([._][0-9]{1,9}){0,4}");
  private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private ManifestJson() {}

  static byte[] write(Manifest manifest) throws JsonProcessingException {
    return JSON.writeValueAsBytes(manifest);
  }

  /**
   * Reads a manifest.
   *
   * @param file the file's name, for the sentence
   * @throws NotABackup if it is something else
   * @throws BackupTooNew if its format is newer than this tool's
   * @throws BackupDamaged if it says nothing that can be used
   */
  static Manifest read(String file, byte[] text) {
    JsonNode root;
    try {
      root = JSON.readTree(text);
    } catch (IOException e) {
      throw new BackupDamaged("its manifest cannot be read");
    }
    if (!Manifest.FORMAT.equals(root.path("format").asText())) {
      throw new NotABackup(file, "its manifest names another format");
    }
    JsonNode version = root.path("formatVersion");
    if (!version.isInt() || version.asInt() < 1) {
      throw new BackupDamaged("its manifest names no version of the format");
    }
    if (version.asInt() > Manifest.FORMAT_VERSION) {
      throw new BackupTooNew("format", version.asText(), Integer.toString(Manifest.FORMAT_VERSION));
    }
    try {
      return checked(JSON.treeToValue(root, Manifest.class));
    } catch (JsonProcessingException e) {
      throw new BackupDamaged("its manifest is incomplete or misshapen");
    }
  }

  private static Manifest checked(Manifest said) {
    require(said.madeAt() != null, "when it was made");
    require(fits(VERSION, said.schemaVersion()), "the version of its tables");
    require(said.tables() != null && said.sequences() != null, "its tables");
    Set<String> names = new HashSet<>();
    for (Manifest.Table table : said.tables()) {
      require(table != null && fits(NAME, table.name()), "a table by its name");
      require(names.add(table.name()), "the table " + table.name() + " once only");
      require(
          table.rows() >= 0 && table.bytes() > 0 && fits(SHA256, table.sha256()),
          "the size and checksum of " + table.name());
      require(columns(table.columns()), "the columns of " + table.name());
    }
    for (Manifest.Sequence sequence : said.sequences()) {
      require(sequence != null && fits(NAME, sequence.name()), "a counter by its name");
    }
    return said;
  }

  private static boolean columns(List<String> names) {
    return names != null
        && !names.isEmpty()
        && names.stream().allMatch(name -> fits(NAME, name))
        && new HashSet<>(names).size() == names.size();
  }

  private static boolean fits(Pattern form, String text) {
    return text != null && form.matcher(text).matches();
  }

  private static void require(boolean said, String what) {
    if (!said) {
      throw new BackupDamaged("its manifest does not name " + what);
    }
  }
}
