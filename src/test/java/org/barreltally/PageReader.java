package org.barreltally;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;

/**
 * Somebody at the pages: signs in, reads, and sends forms the way a browser without scripts does.
 */
public final class PageReader {

  private static final String COOKIE = "barreltally-session";
  private final String session;

  private PageReader(String session) {
    this.session = session;
  }

  public static PageReader asOwner() {
    return as("owner", "only for the tests");
  }

  public static PageReader as(String name, String password) {
    return new PageReader(
        given()
            .redirects()
            .follow(false)
            .formParam("username", name)
            .formParam("password", password)
            .post("/sign-in")
            .then()
            .statusCode(303)
            .extract()
            .cookie(COOKIE));
  }

  /** What the cookie holds. */
  public String session() {
    return session;
  }

  /** A page that must be there. */
  public Document reads(String path) {
    return page(given().cookie(COOKIE, session).get(path), 200);
  }

  /**
   * Sends a form with all it holds.
   *
   * @param to the form's address
   * @param fieldsAndTexts what is typed over it, in turns; null takes a field out
   */
  public Response sends(Document page, String to, String... fieldsAndTexts) {
    FormElement form = (FormElement) page.selectFirst("main form[action=" + to + "]");
    assertNotNull(form, () -> "no form to " + to + " in " + page.body().text());
    Map<String, String> said = new LinkedHashMap<>();
    form.formData().forEach(field -> said.put(field.key(), field.value()));
    for (int n = 0; n < fieldsAndTexts.length; n += 2) {
      if (fieldsAndTexts[n + 1] == null) {
        said.remove(fieldsAndTexts[n]);
      } else {
        said.put(fieldsAndTexts[n], fieldsAndTexts[n + 1]);
      }
    }
    return sends(to, said);
  }

  /** Sends fields to an address. */
  public Response sends(String to, Map<String, String> said) {
    return given()
        .cookie(COOKIE, session)
        .redirects()
        .follow(false)
        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
        .formParams(said)
        .post(to);
  }

  /** Where a form that was done sends the browser. */
  public static String sentTo(Response done) {
    assertEquals(303, done.statusCode(), () -> Jsoup.parse(done.asString()).text());
    return done.header("Location").replaceFirst("^https?://[^/]+", "");
  }

  /** The page of an answer. */
  public static Document page(Response answer, int status) {
    Document page = Jsoup.parse(answer.asString());
    assertEquals(status, answer.statusCode(), () -> page.text());
    return page;
  }
}
