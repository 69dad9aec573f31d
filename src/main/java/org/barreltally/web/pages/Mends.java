package org.barreltally.web.pages;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What to do about a field that was refused, in the viewer's language. Rules say it in English;
 * {@code words/mends_fr.txt} holds the same in French, line by line, with {@code {}} where the rule
 * fills something in. What stands there not stays English.
 */
final class Mends {

  private static final String FILE = "/words/mends_fr.txt";
  private static final Mends FRENCH = read();

  /** A sentence in which something is filled in. */
  private record Filled(Pattern english, String french, int length) {

    Optional<String> of(String said) {
      Matcher matcher = english.matcher(said);
      if (!matcher.matches()) {
        return Optional.empty();
      }
      String text = french;
      for (int n = 0; n < matcher.groupCount(); n++) {
        text = text.replace("{" + n + "}", matcher.group(n + 1));
      }
      return Optional.of(text);
    }
  }

  private final Map<String, String> whole = new HashMap<>();
  private final List<Filled> filled = new ArrayList<>();

  private Mends() {}

  /** The same in the viewer's language, where that is known. */
  static String of(String english) {
    return Viewer.languageNow() == Viewer.Language.FR ? FRENCH.french(english) : english;
  }

  String french(String english) {
    String known = whole.get(english);
    if (known != null) {
      return known;
    }
    return filled.stream()
        .map(one -> one.of(english))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(english);
  }

  static Mends read() {
    Mends mends = new Mends();
    try (InputStream file = Mends.class.getResourceAsStream(FILE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
      lines.lines().filter(line -> !line.startsWith("#")).forEach(mends::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    // The one with most words of its own speaks first.
    mends.filled.sort(Comparator.comparingInt(Filled::length).reversed());
    return mends;
  }

  private void add(String line) {
    String[] both = line.split(" \\| ", 2);
    if (!both[0].contains("{}")) {
      whole.put(both[0], both[1]);
      return;
    }
    StringBuilder pattern = new StringBuilder();
    for (String part : both[0].split("\\{}", -1)) {
      pattern.append(pattern.isEmpty() ? "" : "(.+?)").append(Pattern.quote(part));
    }
    filled.add(new Filled(Pattern.compile(pattern.toString()), both[1], both[0].length()));
  }
}
