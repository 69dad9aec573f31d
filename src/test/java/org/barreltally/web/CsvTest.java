package org.barreltally.web;

import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.people.PersonFixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a list is written as CSV: RFC 4180, all parts, and nothing that a spreadsheet would run. */
@QuarkusTest
class CsvTest {

  @Inject PersonFixture people;

  @Test
  void the_whole_list_is_written_part_by_part_and_reads_back() throws Exception {
    Tried.PARTS.clear();
    Response answer = Ask.asOwner().accept("text/csv").get("/api/tried/many");
    answer
        .then()
        .statusCode(200)
        .header("Content-Type", "text/csv;charset=UTF-8")
        .header("Content-Disposition", "attachment; filename=\"tried-many.csv\"")
        .header("Vary", "Accept");
    // 100 by the usual limit, then the largest parts there are: 100 + 500 + 500 + 101 = 1201
    assertEquals(List.of(100, 500, 500, 500), Tried.PARTS);
    List<CSVRecord> rows = parsed(answer.asString());
    assertEquals(1201, rows.size());
    for (int i = 0; i < rows.size(); i++) {
      int n = i + 1;
      assertEquals(Integer.toString(n), rows.get(i).get("n"));
      assertEquals(
          Tried.NAMES.get(n % Tried.NAMES.size()), readBack(rows.get(i).get("name")), "row " + n);
    }
  }

  @Test
  void lines_end_in_cr_lf_and_quotes_are_doubled() {
    // RFC 4180, 2: records end in CRLF; 2.6 and 2.7: fields with commas or quotes
    String text = Ask.asOwner().accept("text/csv").get("/api/tried/many?limit=2").asString();
    assertEquals("n,name\r\n1,\"a, comma\"\r\n2,\"a \"\"quoted\"\" word\"\r\n", text);
  }

  @Test
  void text_that_a_spreadsheet_would_run_is_disarmed_and_numbers_stay_numbers() throws Exception {
    // the characters named by OWASP, CSV Injection: = + - @ tab
    List<CSVRecord> rows =
        parsed(Ask.asOwner().accept("text/csv").get("/api/tried/many").asString());
    List<String> names = rows.stream().limit(11).map(row -> row.get("name")).toList();
    assertEquals(
        List.of("'=1+1", "'+49 30 1", "'-2", "'@home", "'\tin", "''=kept"), names.subList(5, 11));
    String gap =
        Ask.asOwner().accept("text/csv").get("/api/tried/measured").asString().split("\r\n")[1];
    assertEquals("-0.132,gal,28.00,USD,'-x", gap);
  }

  @Test
  void by_the_address_a_byte_order_mark_comes_first_and_by_the_header_none() {
    byte[] marked = Ask.asOwner().get("/api/tried/many?as=csv&limit=1").asByteArray();
    assertArrayEquals(
        "\uFEFFn,name\r\n".getBytes(StandardCharsets.UTF_8), Arrays.copyOf(marked, 11));
    byte[] plain = Ask.asOwner().accept("text/csv").get("/api/tried/many?limit=1").asByteArray();
    assertEquals('n', plain[0]);
  }

  @Test
  void with_a_limit_it_is_one_part_and_the_header_link_names_the_next() throws Exception {
    Response first = Ask.asOwner().get("/api/tried/many?as=csv&limit=500");
    assertEquals(500, parsed(first.asString().substring(1)).size());
    String link = first.header("Link");
    assertTrue(link.startsWith("<http") && link.endsWith(">; rel=\"next\""), link);
    String next = link.substring(link.indexOf("/api"), link.indexOf('>'));
    List<CSVRecord> second =
        parsed(Ask.asOwner().urlEncodingEnabled(false).get(next).asString().substring(1));
    assertEquals("501", second.get(0).get("n"));
    Response last = Ask.asOwner().get("/api/tried/many?as=csv&limit=500&after=MToxMjAw");
    assertNull(last.header("Link"), "1:1200 leaves one item");
  }

  @Test
  void an_empty_list_has_the_headings_of_a_full_one() {
    String empty =
        Ask.asOwner().accept("text/csv").get("/api/tried/many?after=MToxMjAx").asString();
    assertEquals("n,name\r\n", empty);
    String none = Ask.asOwner().accept("text/csv").get("/api/movements?bookYear=2998").asString();
    String some = Ask.asOwner().accept("text/csv").get("/api/movements?limit=1").asString();
    assertEquals(some.split("\r\n")[0] + "\r\n", none);
  }

  @ParameterizedTest(name = "{0} asked for with {1} answers {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "/api/tried/many|text/csv|text/csv",
        "/api/tried/many|text/csv, */*;q=0.1|text/csv",
        "/api/tried/many|application/json;q=0.5, text/csv|text/csv",
        "/api/tried/many|text/*|text/csv",
        "/api/tried/many|application/json, text/csv;q=0.5|application/json",
        "/api/tried/many|*/*|application/json",
        "/api/tried/many|text/html,application/xml;q=0.9,*/*;q=0.8|application/json",
        "/api/tried/many?as=csv|text/html,application/xml;q=0.9,*/*;q=0.8|text/csv",
        "/api/tried/many?as=json|*/*|application/json"
      })
  void the_best_form_that_is_acceptable_is_answered(String path, String accept, String form) {
    Ask.asOwner()
        .header("Accept", accept)
        .get(path)
        .then()
        .statusCode(200)
        .header("Content-Type", startsWith(form));
  }

  @ParameterizedTest(name = "{0} is refused with {1} {2}")
  @CsvSource({
    "/api/tried/many?as=xml,400,invalid-field,as",
    "/api/tried/many?as=,400,invalid-field,as",
    "/api/settings?as=csv,400,invalid-field,as",
    "/api/tried/many?as=csv&limit=0,400,invalid-field,limit",
    "/api/tried/many?as=csv&after=x,400,invalid-field,after"
  })
  void what_cannot_be_is_refused_as_json(String path, int status, String code, String field) {
    Ask.asOwner()
        .get(path)
        .then()
        .statusCode(status)
        .contentType("application/problem+json")
        .body("code", equalTo(code))
        .body("errors[0].field", equalTo(field));
  }

  @Test
  void a_list_that_breaks_on_the_way_never_looks_whole() throws Exception {
    java.net.http.HttpRequest asked =
        java.net.http.HttpRequest.newBuilder(
                java.net.URI.create(
                    "http://localhost:" + io.restassured.RestAssured.port + "/api/tried/breaking"))
            .header("Accept", "text/csv")
            .header(
                "Authorization",
                "Basic "
                    + java.util.Base64.getEncoder()
                        .encodeToString(("owner:" + Ask.OWNER_PASSWORD).getBytes()))
            .build();
    assertThrows(
        java.io.IOException.class,
        () ->
            java.net.http.HttpClient.newHttpClient()
                .send(asked, java.net.http.HttpResponse.BodyHandlers.ofString()));
  }

  @Test
  void what_is_no_list_has_no_csv_and_says_so() {
    Ask.asOwner()
        .accept("text/csv")
        .get("/api/settings")
        .then()
        .statusCode(406)
        .body("code", equalTo("not-acceptable"));
    Ask.asOwner().accept("text/csv").get("/api/tokens/none").then().statusCode(not(200));
  }

  @Test
  void roles_hold_as_for_json() {
    String packer = people.with("packing", "lids and more lids");
    for (String path : List.of("/api/backups?as=csv", "/api/backups")) {
      io.restassured.RestAssured.given()
          .auth()
          .preemptive()
          .basic(packer, "lids and more lids")
          .accept("text/csv")
          .get(path)
          .then()
          .statusCode(403);
    }
    io.restassured.RestAssured.given()
        .get("/api/barrels?as=csv")
        .then()
        .statusCode(401)
        .contentType(endsWith("json"));
  }

  private static List<CSVRecord> parsed(String text) throws Exception {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.getRecords();
    }
  }

  /** Takes one apostrophe away, as whoever reads the file does. */
  private static String readBack(String cell) {
    return cell.replaceFirst("^'('*[=+\\-@\\t\\r\\n])", "$1");
  }
}
