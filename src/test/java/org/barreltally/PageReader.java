package org.barreltally;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** Somebody before the pages: signs in by the form, reads pages, fills in their forms. */
public final class PageReader {

  private static final String COOKIE = "barreltally-session";

  private final String session;

  private PageReader(String session) {
    this.session = session;
  }

  public static PageReader owner() {
    return as("owner", "only for the tests");
  }

  public static PageReader as(String name, String password) {
    String session =
        given()
            .redirects()
            .follow(false)
            .formParam("username", name)
            .formParam("password", password)
            .post("/sign-in")
            .then()
            .statusCode(303)
            .extract()
            .cookie(COOKIE);
    assertNotNull(session);
    return new PageReader(session);
  }

  private RequestSpecification asks() {
    return given().urlEncodingEnabled(false).cookie(COOKIE, session).redirects().follow(false);
  }

  /** Reads a page that must be there. */
  public Document reads(String path) {
    Response answer = asks().get(path);
    assertEquals(200, answer.statusCode(), path + "\n" + answer.asString());
    return Jsoup.parse(answer.asString());
  }

  /** What the cookie holds. */
  public String session() {
    return session;
  }

  /**
   * Sends a form as a browser sends it, with some fields filled in.
   *
   * @param form the form's address, or a selector that finds it
   * @param fieldsAndTexts what is typed over it, in turns; null takes a field out
   */
  public Response sends(Document page, String form, String... fieldsAndTexts) {
    String selector = form.startsWith("/") ? "main form[action=" + form + "]" : form;
    Element found = page.selectFirst(selector);
    assertNotNull(found, () -> "no form " + selector + " in " + page.body().text());
    Map<String, String> fields = new LinkedHashMap<>();
    ((FormElement) found).formData().forEach(field -> fields.put(field.key(), field.value()));
    for (int n = 0; n < fieldsAndTexts.length; n += 2) {
      if (fieldsAndTexts[n + 1] == null) {
        fields.remove(fieldsAndTexts[n]);
      } else {
        fields.put(fieldsAndTexts[n], fieldsAndTexts[n + 1]);
      }
    }
    return posts(found.attr("action"), fields);
  }

  /** Reads a list that other tests may have made long: the first page, with the rows of all. */
  public Document readsWhole(String path) {
    Document whole = reads(path);
    Element next = whole.selectFirst("nav.pager a[rel=next]");
    while (next != null) {
      Document part = reads(next.attr("href"));
      Element body = whole.selectFirst("tbody");
      part.select("main tbody").first().children().forEach(body::appendChild);
      next = part.selectFirst("nav.pager a[rel=next]");
    }
    return whole;
  }

  /** Sends fields to an address. */
  public Response posts(String path, Map<String, String> fields) {
    return asks()
        .urlEncodingEnabled(true)
        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
        .formParams(fields)
        .post(path);
  }

  /** Sends a file with a form's hidden fields. */
  public Response sendsFile(Document page, String selector, String buyer, String file) {
    RequestSpecification request = asks();
    FormElement form = (FormElement) page.selectFirst(selector);
    form.formData().stream()
        .filter(field -> !field.key().equals("buyer") && !field.key().equals("file"))
        .forEach(field -> request.multiPart(field.key(), field.value()));
    return request
        .multiPart("buyer", buyer)
        .multiPart("file", "aunts.csv", file.getBytes(java.nio.charset.StandardCharsets.UTF_8))
        .post(form.attr("action"));
  }

  /** What stands beside a field that was refused. */
  public static String beside(Response refused, String field) {
    Document page = Jsoup.parse(refused.asString());
    Element input = page.selectFirst("[name='" + field + "']");
    if (input != null && input.hasAttr("aria-describedby")) {
      return page.getElementById(input.attr("aria-describedby")).text();
    }
    Element message = page.getElementById("f-" + field.replaceAll("[^A-Za-z0-9]+", "-"));
    return message == null ? "" : message.text();
  }

  /** Where a form that was done sends the browser. */
  public static String sentTo(Response done) {
    assertEquals(303, done.statusCode(), () -> Jsoup.parse(done.asString()).text());
    return done.header("Location").replaceFirst("^https?://[^/]+", "");
  }

  /** The page of an answer. */
  public static Document page(Response answer, int status) {
    Document page = Jsoup.parse(answer.asString());
    assertEquals(status, answer.statusCode(), page::text);
    return page;
  }
}
