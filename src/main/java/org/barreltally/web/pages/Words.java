package org.barreltally.web.pages;

import io.quarkus.arc.Arc;
import io.quarkus.qute.TemplateExtension;
import io.vertx.core.http.HttpServerRequest;
import jakarta.ws.rs.core.UriBuilder;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * The texts of pages in the viewer's language: {@code {words:of('barrels.title')}}. The part of a
 * key before its first dot names the file: {@code words/barrels.properties} in English, {@code
 * words/barrels_fr.properties} in French. Values that stand in a text are {@code {0}}, {@code {1}}
 * (java.text.MessageFormat); apostrophes are typographic ones, since the straight one means
 * something there.
 */
@TemplateExtension(namespace = "words")
public final class Words {

  private static final ResourceBundle.Control NO_OTHER_LANGUAGE =
      ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

  private Words() {}

  public static String of(String key) {
    return text(key, Viewer.languageNow().locale());
  }

  public static String of(String key, Object first) {
    return format(key, first);
  }

  public static String of(String key, Object first, Object second) {
    return format(key, first, second);
  }

  public static String of(String key, Object first, Object second, Object third) {
    return format(key, first, second, third);
  }

  public static String of(String key, Object first, Object second, Object third, Object fourth) {
    return format(key, first, second, third, fourth);
  }

  /**
   * A text with a number that decides its form: {@code key.one} or {@code key.many}. One is what
   * the language counts as one: in French nought too.
   */
  public static String count(String key, Number number) {
    long n = number.longValue();
    boolean one = n == 1 || n == 0 && Viewer.languageNow() == Viewer.Language.FR;
    return format(key + (one ? ".one" : ".many"), number);
  }

  /** The words of a code of the interface, such as a state: the text of {@code key.code}. */
  public static String code(String key, Object code) {
    return code == null ? "–" : of(key + "." + Codes.of(code));
  }

  /**
   * What a refusal is called.
   *
   * @param title what it says itself, in English; it stands where a language has no word of its own
   */
  public static String refusal(String code, String title) {
    if (Viewer.languageNow() == Viewer.Language.EN) {
      return title;
    }
    ResourceBundle titles = bundle("refusals", Viewer.languageNow().locale());
    return titles.containsKey(code) ? titles.getString(code) : title;
  }

  /** What to do about a field that was refused, in the viewer's language where it is known. */
  public static String mend(String english) {
    return Mends.of(english);
  }

  /** An address with a part of its path filled in: {@code words:address('/barrels/{}', tag)}. */
  public static String address(String pattern, Object part) {
    return UriBuilder.fromUri(pattern.replace("{}", "{part}")).build(part).toString();
  }

  /** An address with two parts of its path filled in. */
  public static String address(String pattern, Object first, Object second) {
    return UriBuilder.fromUri(
            pattern.replaceFirst("\\{}", "{first}").replaceFirst("\\{}", "{second}"))
        .build(first, second)
        .toString();
  }

  /**
   * The address of a list as CSV, with the filters that the page at hand was asked with.
   *
   * @param filters the names of those that page and interface share, with commas between
   */
  public static String csv(String list, String filters) {
    HttpServerRequest asked = Arc.container().instance(HttpServerRequest.class).get();
    UriBuilder address = UriBuilder.fromUri(list).queryParam("as", "csv");
    for (String filter : filters.split(",")) {
      String text = asked.getParam(filter);
      if (text != null && !text.isBlank()) {
        address.queryParam(filter, text.strip());
      }
    }
    return address.build().toString();
  }

  private static String format(String key, Object... values) {
    Locale locale = Viewer.languageNow().locale();
    return new MessageFormat(text(key, locale), locale).format(values);
  }

  private static String text(String key, Locale locale) {
    int dot = key.indexOf('.');
    if (dot < 1) {
      throw new IllegalArgumentException("a key names its file before the first dot: " + key);
    }
    try {
      return bundle(key.substring(0, dot), locale).getString(key.substring(dot + 1));
    } catch (MissingResourceException e) {
      throw new IllegalArgumentException("no text for " + key, e);
    }
  }

  private static ResourceBundle bundle(String file, Locale locale) {
    return ResourceBundle.getBundle(
        "words/" + file, locale, Words.class.getClassLoader(), NO_OTHER_LANGUAGE);
  }
}
