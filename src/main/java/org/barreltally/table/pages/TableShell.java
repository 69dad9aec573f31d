package org.barreltally.table.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;

/**
 * The files of the phone's application and the worker that keeps them for flight mode. The worker
 * carries a hash over all of them, so a phone takes a new release whole or not at all.
 */
@ApplicationScoped
class TableShell {

  private static final String FOLDER = "META-INF/resources";
  private static final String WORKER = "table/worker.js";
  private static final ResourceBundle.Control NO_OTHER_LANGUAGE =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  /** Everything the application loads; what is not here is not there in flight mode. */
  private static final List<String> FILES =
      List.of(
          "/table/index.html",
          "/table/table.css",
          "/table/manifest.webmanifest",
          "/table/icon.svg",
          "/table/icon-192.png",
          "/table/icon-512.png",
          "/table/app.js",
          "/table/basket.js",
          "/table/clock.js",
          "/table/counts.js",
          "/table/deals.js",
          "/table/dom.js",
          "/table/entries.js",
          "/table/guard.js",
          "/table/ids.js",
          "/table/money.js",
          "/table/others.js",
          "/table/pairing.js",
          "/table/sell.js",
          "/table/sending.js",
          "/table/store.js",
          "/table/words.js",
          "/webjars/idb/build/index.js",
          "/webjars/idb/build/wrap-idb-value.js");

  private final ObjectMapper json;
  private final String worker;

  TableShell(ObjectMapper json) {
    this.json = json;
    this.worker = worker();
  }

  /** The worker's script, which names every file and the hash over their contents. */
  String script() {
    return worker;
  }

  /** The words of the application in a language, by key. */
  String words(Locale locale) {
    ResourceBundle bundle =
        ResourceBundle.getBundle(
            "words/table", locale, TableShell.class.getClassLoader(), NO_OTHER_LANGUAGE);
    Map<String, String> words = new TreeMap<>();
    bundle.keySet().forEach(key -> words.put(key, bundle.getString(key)));
    return written(words);
  }

  private String worker() {
    List<String> cached =
        FILES.stream().map(file -> file.equals("/table/index.html") ? "/table/" : file).toList();
    try {
      MessageDigest hash = MessageDigest.getInstance("SHA-256");
      for (String file : FILES) {
        hash.update(read(resource(file)));
      }
      for (Locale locale : List.of(Locale.ENGLISH, Locale.FRENCH)) {
        hash.update(words(locale).getBytes(StandardCharsets.UTF_8));
      }
      String release = HexFormat.of().formatHex(hash.digest()).substring(0, 16);
      return "const RELEASE = '%s';%nconst FILES = %s;%n".formatted(release, written(cached))
          + new String(read(WORKER), StandardCharsets.UTF_8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** A webjar lies in a folder that names its version, which its address leaves out. */
  private static String resource(String file) {
    return file.startsWith("/webjars/idb/")
        ? FOLDER + file.replace("/webjars/idb/", "/webjars/idb/" + IDB_VERSION + "/")
        : FOLDER + file;
  }

  private static final String IDB_VERSION = "7.0.1";

  private static byte[] read(String name) {
    try (InputStream in = TableShell.class.getClassLoader().getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("a file of the show table is missing: " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String written(Object value) {
    try {
      return json.writeValueAsString(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("words cannot be written", e);
    }
  }
}
