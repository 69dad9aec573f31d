package org.barreltally.web.pages;

import io.quarkus.arc.Arc;
import io.quarkus.arc.Unremovable;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * How the person who looks at a page wants to read it: language, and US or metric units. Kept in a
 * cookie of the browser, so that each phone and laptop keeps its own; without it the browser's
 * languages decide, and units are US.
 */
@RequestScoped
@Unremovable
public class Viewer {

  /** The cookie: language and units, such as {@code fr.metric}. */
  static final String COOKIE = "barreltally-view";

  /** A language the texts are written in. Dates and numbers follow its locale. */
  public enum Language {
    EN(Locale.US),
    FR(Locale.CANADA_FRENCH);

    private final Locale locale;

    Language(Locale locale) {
      this.locale = locale;
    }

    public Locale locale() {
      return locale;
    }

    /** {@code en, fr}. */
    public String code() {
      return locale.getLanguage();
    }
  }

  /** The units quantities are shown in. */
  public enum Units {
    US,
    METRIC;

    /** {@code us, metric}. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private final Language language;
  private final Units units;

  Viewer(HttpServerRequest request) {
    Cookie cookie = request.getCookie(COOKIE);
    String[] said = cookie == null ? new String[0] : cookie.getValue().split("\\.");
    language =
        said.length == 2 ? language(said[0]) : preferred(request.getHeader("Accept-Language"));
    units = said.length == 2 && said[1].equals(Units.METRIC.code()) ? Units.METRIC : Units.US;
  }

  public Language language() {
    return language;
  }

  public Units units() {
    return units;
  }

  static Language language(String code) {
    return Arrays.stream(Language.values())
        .filter(one -> one.code().equals(code))
        .findFirst()
        .orElse(Language.EN);
  }

  private static Language preferred(String header) {
    if (header == null) {
      return Language.EN;
    }
    try {
      List<Locale> known = Arrays.stream(Language.values()).map(Language::locale).toList();
      List<Locale> languages =
          known.stream().map(locale -> Locale.forLanguageTag(locale.getLanguage())).toList();
      Locale best = Locale.lookup(Locale.LanguageRange.parse(header), languages);
      return best == null ? Language.EN : language(best.getLanguage());
    } catch (IllegalArgumentException e) {
      return Language.EN;
    }
  }

  /** The language of the page being written; English where nobody's request is at work. */
  static Language languageNow() {
    return atWork() ? now().language() : Language.EN;
  }

  /** The units of the page being written; US where nobody's request is at work. */
  static Units unitsNow() {
    return atWork() ? now().units() : Units.US;
  }

  private static boolean atWork() {
    return Arc.container() != null
        && Arc.container().requestContext().isActive()
        && Arc.container().instance(CurrentVertxRequest.class).get().getCurrent() != null;
  }

  private static Viewer now() {
    return Arc.container().instance(Viewer.class).get();
  }
}
