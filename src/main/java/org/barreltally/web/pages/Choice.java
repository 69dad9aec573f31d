package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import java.util.Arrays;
import java.util.List;

/**
 * One of several to choose from.
 *
 * @param code as the interface writes it
 * @param words as the viewer reads it
 */
@TemplateData
public record Choice(String code, String words) {

  /** The constants of a listed kind, named by {@code key.code} in {@link Words}. */
  public static List<Choice> of(Enum<?>[] constants, String key) {
    return Arrays.stream(constants)
        .map(one -> new Choice(Codes.of(one), Words.code(key, one)))
        .toList();
  }
}
