package org.barreltally;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Somebody at the pages: signs in by the form, reads pages, and sends forms as a browser does. */
public final class Pages {

  private static final String COOKIE = "barreltally-session";

  private final String session;

  private Pages(String session) {
    this.session = session;
  }

  /** The owner. */
  public static Pages owner() {
    return of("owner", "only for the tests");
  }

  public static Pages of(String name, String password) {
    Response signedIn =
        given()
            .redirects()
            .follow(false)
            .formParam("username", name)
            .formParam("password", password)
            .post("/sign-in");
    assertEquals(303, signedIn.statusCode());
    return new Pages(signedIn.cookie(COOKIE));
  }

  /** Reads a page that must be there. */
  public Document reads(String path) {
    Response page = given().cookie(COOKIE, session).header("Accept", "text/html").get(path);
    assertEquals(200, page.statusCode(), path + "\n" + page.asString());
    return Jsoup.parse(page.asString());
  }

  /** A form on its way: what stands in its fields, and where it goes. */
  public final class Sheet {
    private final String to;
    private final Map<String, String> fields = new LinkedHashMap<>();

    private Sheet(Element form) {
      to = form.attr("action");
      for (Element field : form.select("input[name], select[name], textarea[name]")) {
        if (field.tagName().equals("select")) {
          Element chosen = field.selectFirst("option[selected]");
          chosen = chosen == null ? field.selectFirst("option") : chosen;
          fields.put(field.attr("name"), chosen == null ? "" : chosen.attr("value"));
        } else if (!field.attr("type").equals("checkbox") || field.hasAttr("checked")) {
          fields.put(
              field.attr("name"),
              field.tagName().equals("textarea") ? field.wholeText() : field.attr("value"));
        }
      }
    }

    /** Types in a field. */
    public Sheet with(String field, Object text) {
      fields.put(field, text.toString());
      return this;
    }

    /** The name of the field in the row whose hidden fields hold these texts. */
    public Sheet inRow(String hidden, String text, String field, Object typed) {
      String row =
          fields.entrySet().stream()
              .filter(e -> e.getKey().endsWith("]." + hidden) && e.getValue().equals(text))
              .map(e -> e.getKey().substring(0, e.getKey().lastIndexOf('.') + 1))
              .findFirst()
              .orElseThrow(() -> new AssertionError("no row with " + text + " in " + fields));
      return with(row + field, typed);
    }

    public Response sends() {
      return given()
          .redirects()
          .follow(false)
          .cookie(COOKIE, session)
          .header("Accept", "text/html")
          .contentType("application/x-www-form-urlencoded; charset=UTF-8")
          .formParams(fields)
          .post(to);
    }

    /** Sends it; the path to which the browser is sent on then. */
    public String done() {
      Response answer = sends();
      assertEquals(303, answer.statusCode(), answer.asString());
      return answer.header("Location").replaceFirst("^http://[^/]+", "");
    }

    /** Sends it and is refused; the page that comes back. */
    public Document refused(int status) {
      Response answer = sends();
      assertEquals(status, answer.statusCode(), answer.asString());
      return Jsoup.parse(answer.asString());
    }
  }

  /** The form of a page that goes to an address. */
  public Sheet form(String path, String action) {
    Element form = reads(path).selectFirst("form[method=post][action=\"" + action + "\"]");
    assertNotNull(form, "no form to " + action);
    return new Sheet(form);
  }

  /** The form of a page that goes back to its own address. */
  public Sheet form(String path) {
    return form(path, path.replaceFirst("\\?.*", ""));
  }

  /** Posts fields without a form, as somebody would who makes one up. */
  public int posts(String path) {
    return given()
        .redirects()
        .follow(false)
        .cookie(COOKIE, session)
        .contentType("application/x-www-form-urlencoded")
        .formParam("reason", "x")
        .post(path)
        .statusCode();
  }

  /** What stands beside a field as to be mended; empty where nothing does. */
  public static String beside(Document page, String field) {
    Element input = page.selectFirst("[name=\"" + field + "\"]");
    assertNotNull(input, "no field " + field);
    if (!input.attr("aria-invalid").equals("true")) {
      return "";
    }
    Element message = page.getElementById(input.attr("aria-describedby"));
    assertNotNull(message, "nothing beside " + field);
    return message.text();
  }

  /** What a field holds. */
  public static String held(Document page, String field) {
    Element input = page.selectFirst("[name=\"" + field + "\"]");
    assertNotNull(input, "no field " + field);
    return input.attr("value");
  }
}
