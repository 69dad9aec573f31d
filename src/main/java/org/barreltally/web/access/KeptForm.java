package org.barreltally.web.access;

import io.netty.handler.codec.http.QueryStringDecoder;
import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedMap;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What was typed in a form that came after its session had ended. It is carried through signing in
 * in hidden fields, stored nowhere, and shown in its form again; it is never done by itself.
 *
 * @param fields as they were sent, without passwords and without the token of the ended session
 */
@TemplateData
record KeptForm(List<Field> fields) {

  /** A field as it was sent. */
  @TemplateData
  record Field(String name, String value) {}

  /** The largest body that is kept, in bytes. */
  static final int BYTES_MAX = 200_000;

  /** What the hidden fields' names begin with, so that none is taken for the name of the user. */
  static final String MARK = "kept.";

  private static final int FIELDS_MAX = 900;
  private static final int NAME_MAX = 200;
  private static final int TEXT_MAX = 10_000;

  /** Nothing was kept. */
  static KeptForm none() {
    return new KeptForm(List.of());
  }

  /**
   * Reads the body of a form (application/x-www-form-urlencoded).
   *
   * @return empty where it is none, or more than is kept
   */
  static Optional<KeptForm> read(String body) {
    try {
      return bounded(
          new QueryStringDecoder(body, StandardCharsets.UTF_8, false, FIELDS_MAX + 1, true)
              .parameters());
    } catch (IllegalArgumentException malformed) {
      return Optional.empty();
    }
  }

  /** What the sign-in page sent back of it. */
  static KeptForm carried(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> fields = new jakarta.ws.rs.core.MultivaluedHashMap<>();
    said.forEach(
        (name, values) -> {
          if (name.startsWith(MARK)) {
            fields.put(name.substring(MARK.length()), values);
          }
        });
    return bounded(fields).orElseGet(KeptForm::none);
  }

  private static Optional<KeptForm> bounded(Map<String, List<String>> said) {
    List<Field> kept = new ArrayList<>();
    for (Map.Entry<String, List<String>> field : said.entrySet()) {
      for (String value : field.getValue()) {
        if (field.getKey().length() > NAME_MAX || value.length() > TEXT_MAX) {
          return Optional.empty();
        }
        if (!isLeftOut(field.getKey())) {
          kept.add(new Field(field.getKey(), value));
        }
      }
    }
    return kept.size() > FIELDS_MAX ? Optional.empty() : Optional.of(new KeptForm(kept));
  }

  /** Secrets are typed anew, and the token is of a session that is no more. */
  private static boolean isLeftOut(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return name.equals(FormToken.FIELD)
        || name.equals(FormToken.RESUMED)
        || lower.contains("password")
        || lower.contains("secret");
  }

  public boolean isEmpty() {
    return fields.isEmpty();
  }
}
