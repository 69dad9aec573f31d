package org.barreltally.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;

/** A form that is sent after its session ended comes back with what was typed, undone. */
@QuarkusTest
class ResumedFormTest {

  private static final String FORM = "application/x-www-form-urlencoded; charset=UTF-8";

  private final String shop = "Store <&\"’> " + UUID.randomUUID();

  private static RequestSpecification browser() {
    return given().redirects().follow(false).accept("text/html,*/*;q=0.8").contentType(FORM);
  }

  private static Map<String, String> fields(Document page, String selector) {
    Map<String, String> fields = new LinkedHashMap<>();
    FormElement form = (FormElement) page.selectFirst(selector);
    assertNotNull(form, page.outerHtml());
    form.formData().forEach(field -> fields.put(field.key(), field.value()));
    return fields;
  }

  private static int shops() {
    return Owner.reads("/api/shops?limit=500").extract().path("items.size()");
  }

  private Document ended() {
    Map<String, String> typed = fields(PageReader.owner().reads("/shops/new"), "form.entry");
    typed.put("name", shop);
    typed.put("commissionPercent", "40");
    typed.put("password", "never shown again");
    Response answer =
        browser().cookie(SignInTest.COOKIE, "ended").formParams(typed).post("/shops/new");
    assertEquals(401, answer.statusCode());
    assertFalse(answer.asString().contains(typed.get("token")));
    assertFalse(answer.asString().contains("never shown"));
    return Jsoup.parse(answer.asString());
  }

  private static Response signIn(Document page, String password) {
    Map<String, String> fields = fields(page, "form[action='/sign-in/back']");
    fields.put("username", "owner");
    fields.put("password", password);
    return browser().formParams(fields).post("/sign-in/back");
  }

  @Test
  void what_was_typed_comes_back_after_a_wrong_and_a_right_password_and_nothing_was_done() {
    int before = shops();
    Response wrong = signIn(ended(), "wrong");
    assertEquals(401, wrong.statusCode());
    Response right = signIn(Jsoup.parse(wrong.asString()), Ask.OWNER_PASSWORD);
    assertEquals(200, right.statusCode());
    String session = right.cookie(SignInTest.COOKIE);
    assertNotNull(session);

    Map<String, String> back =
        fields(Jsoup.parse(right.asString()), "main form[action='/shops/new']");
    Response form =
        browser().cookie(SignInTest.COOKIE, session).formParams(back).post("/shops/new");
    assertEquals(200, form.statusCode());
    Document shown = Jsoup.parse(form.asString());
    assertEquals(shop, shown.selectFirst("[name=name]").val());
    assertEquals("40", shown.selectFirst("[name=commissionPercent]").val());
    assertNull(shown.selectFirst("[name=resumed]"));
    assertEquals(before, shops());

    Map<String, String> sent = fields(shown, "form.entry");
    browser()
        .cookie(SignInTest.COOKIE, session)
        .formParams(sent)
        .post("/shops/new")
        .then()
        .statusCode(303);
    assertEquals(before + 1, shops());
  }

  @Test
  void another_site_can_make_no_use_of_it() {
    browser()
        .header("Sec-Fetch-Site", "cross-site")
        .formParam("name", shop)
        .post("/shops/new")
        .then()
        .statusCode(403);
    browser()
        .header("Sec-Fetch-Site", "cross-site")
        .formParam("username", "owner")
        .formParam("password", Ask.OWNER_PASSWORD)
        .formParam("to", "/shops/new")
        .formParam("kept.name", shop)
        .post("/sign-in/back")
        .then()
        .statusCode(403);
    Response elsewhere =
        browser()
            .formParam("username", "owner")
            .formParam("password", Ask.OWNER_PASSWORD)
            .formParam("to", "https://elsewhere.example/")
            .formParam("kept.name", shop)
            .formParam("kept.token", "made up")
            .post("/sign-in/back");
    assertEquals(200, elsewhere.statusCode());
    Document page = Jsoup.parse(elsewhere.asString());
    assertEquals("/", page.selectFirst("main form").attr("action"));
    assertEquals(1, page.select("main [name=token]").size(), "none but the session’s own");
    assertFalse(elsewhere.asString().contains("made up"));
    // a form that was resumed without this session's token is refused as any other
    browser()
        .cookie(SignInTest.COOKIE, elsewhere.cookie(SignInTest.COOKIE))
        .formParam("resumed", "yes")
        .formParam("name", shop)
        .post("/shops/new")
        .then()
        .statusCode(403);
  }

  @Test
  void what_is_no_form_or_more_than_is_kept_goes_to_the_sign_in_page_alone() {
    browser()
        .formParam("name", "x".repeat(10_001))
        .post("/shops/new")
        .then()
        .statusCode(303)
        .header("Location", equalTo("/sign-in"));
    browser().body("a=1&" + "b=" + "%41".repeat(70_000)).post("/shops/new").then().statusCode(303);
    browser().body("name=%zz").post("/shops/new").then().statusCode(303);
    given()
        .redirects()
        .follow(false)
        .accept("text/html")
        .multiPart("name", shop)
        .post("/shops/new")
        .then()
        .statusCode(303)
        .header("Location", equalTo("/sign-in"));
    given()
        .contentType(FORM)
        .accept("text/html")
        .formParam("a", "1")
        .post("/api/shops")
        .then()
        .statusCode(401);
  }

  @Test
  void the_page_speaks_the_language_of_its_reader() {
    String page =
        browser()
            .cookie("barreltally-view", "fr.metric")
            .formParam("name", shop)
            .post("/shops/new")
            .asString();
    assertTrue(page.contains("Votre session était terminée"), page);
  }
}
