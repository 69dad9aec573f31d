package org.barreltally.stock;

import static org.barreltally.stock.OpeningCsv.BARREL;
import static org.barreltally.stock.OpeningCsv.HEADER;
import static org.barreltally.stock.OpeningCsv.JARS;
import static org.barreltally.stock.ShelfFixture.asOwner;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@QuarkusTest
class OpeningStockRefusalsTest {

  @Inject ShelfFixture shelf;

  private final String tag = "T" + UUID.randomUUID().toString().substring(0, 12);
  private final String lot = ShelfFixture.newLotCode();

  @Test
  void every_bad_line_is_named_at_once_and_nothing_is_entered() {
    String before = shelf.traces();
    enter(
            HEADER
                + BARREL
                + BARREL.replace("TAG", "TAG2").replace("486.5 lb,42 lb", "42 lb,486.5 lb")
                + JARS.replace("PT,36", "PINT,0")
                + "\r\n"
                + BARREL.replace("TAG", "TAG3").replace("66.9", "36.2").replace("stainless", "wood")
                + "cake,,,,,,,,,,,,,,,,,,")
        .statusCode(400)
        .body("code", equalTo("invalid-field"))
        .body(
            "errors.field",
            hasItems(
                "line 3, column gross",
                "line 4, column container",
                "line 4, column count",
                "line 6, column material",
                "line 7, column kind"));
    assertEquals(before, shelf.traces());
  }

  static Stream<Arguments> bad() {
    return Stream.of(
        bad("TAG,,2024", ",,2024", "tag", "B-01"),
        bad("TAG,,2024", "much too long for a tag,,2024", "tag", "at most 16"),
        bad("2024,2024-03-22", "2025,2024-03-22", "season", "2024"),
        bad("2024,2024-03-22", "24,2024-03-22", "season", "2026"),
        bad("2024-03-22", "22.3.2024", "filledOn", "date"),
        bad("2024-03-22", "2999-03-22", "filledOn", "future"),
        bad("486.5 lb", "486.5", "gross", "unit"),
        bad("486.5 lb", "486.5 stone", "gross", "lb"),
        bad("486.5 lb", "486.5 gal", "gross", "weight"),
        bad("486.5 lb", "1e999 lb", "gross", "number"),
        bad("486.5 lb", "999999999999999 lb", "gross", "digits"),
        bad("486.5 lb,42 lb", ",", "gross", "Weigh"),
        bad("42 lb", "", "tare", "tare"),
        bad(",,,66.9", ",40 gal,,66.9", "dipAt", "temperature"),
        bad("66.9", "36.2", "brix", "Baumé"),
        bad("66.9", "12", "brix", ""),
        bad("66.9", "", "brix", "density"),
        bad("66.9,,", "66.9,500 degF,", "brixAt", "212"),
        bad("66.9,,", "66.9,,eye", "instrument", "hydrometer"),
        bad("62,clean", "162,clean", "transmittance", "100"),
        bad("62,clean", "62,sweet", "taste", "clean"),
        bad("clean,,,,", "clean,cool-room,PT,3,", "place", "A barrel has no place"),
        bad("TAG,,", "TAG,lower case,", "lot", "capital"));
  }

  private static Arguments bad(String was, String is, String column, String mend) {
    return Arguments.of(BARREL, was, is, column, mend);
  }

  static Stream<Arguments> badJars() {
    return Stream.of(
        Arguments.of(JARS, ",LOT,", ",,", "lot", "label"),
        Arguments.of(JARS, "2023 2024", "", "season", "crop year"),
        Arguments.of(JARS, "2023 2024", "2024 2025", "season", "2024"),
        Arguments.of(JARS, "cool-room", "broken", "place", "broken"),
        Arguments.of(JARS, "cool-room", "", "place", "cool-room"),
        Arguments.of(JARS, "PT", "PINT", "container", "PINT"),
        Arguments.of(JARS, "PT,36", "PT,3.5", "count", "whole number"),
        Arguments.of(JARS, "PT,36", "PT,-3", "count", "whole number"),
        Arguments.of(JARS, "PT,36", "PT,", "count", "whole number"),
        Arguments.of(JARS, "PT,36", "PT,9999999", "count", "1,000,000"),
        Arguments.of(JARS, "2024-06-20", "2999-06-20", "packedOn", "future"),
        Arguments.of(JARS, "2024-06-20", "", "packedOn", "2025-06-20"),
        Arguments.of(JARS, "41,clean", ",clean", "transmittance", "%Tc"),
        Arguments.of(JARS, "41,clean", "-1,clean", "transmittance", "%Tc"),
        Arguments.of(JARS, "41,clean", "41,", "taste", "clean"),
        Arguments.of(JARS, "67.1", "99", "brix", ""),
        Arguments.of(JARS, "67.1", "x".repeat(5000), "brix", "100 characters"),
        Arguments.of(JARS, "jars,,LOT", "jars,B-1,LOT", "tag", "Jars have no tag"));
  }

  @ParameterizedTest(name = "{3}: {2}")
  @MethodSource({"bad", "badJars"})
  void a_bad_cell_is_named_by_line_and_column(
      String row, String was, String is, String column, String mend) {
    String before = shelf.traces();
    var answer =
        enter(HEADER + row.replace(was, is))
            .statusCode(400)
            .body("code", equalTo("invalid-field"))
            .body("errors.field", hasItems("line 2, column " + column));
    if (!mend.isEmpty()) {
      answer.body(
          "errors.find { it.field == 'line 2, column " + column + "' }.message",
          containsString(mend));
    }
    assertEquals(before, shelf.traces());
  }

  static Stream<Arguments> unreadable() {
    return Stream.of(
        Arguments.of("", "broken-csv", "kind is missing"),
        Arguments.of(HEADER, "broken-csv", "no rows"),
        Arguments.of("kind,colour\r\nbarrel,red\r\n", "broken-csv", "colour"),
        Arguments.of("tag,lot\r\nB-1,X\r\n", "broken-csv", "kind"),
        Arguments.of("kind,kind\r\nbarrel,jars\r\n", "broken-csv", "same name"),
        Arguments.of("kind,\r\nbarrel,jars\r\n", "broken-csv", "no name"),
        Arguments.of("kind,tag\r\nbarrel,\"B-1\r\n", "broken-csv", "quotation"),
        Arguments.of("kind,tag\r\nbarrel,\"B\"-1\r\n", "broken-csv", "quotation"),
        Arguments.of("kind,tag\r\nbarrel,B\0\r\n", "broken-csv", "NUL"),
        Arguments.of("kind\r\n" + "barrel\r\n".repeat(5001), "broken-csv", "5,000"));
  }

  @ParameterizedTest(name = "{1}: {2}")
  @MethodSource("unreadable")
  void a_file_that_cannot_be_read_is_refused(String file, String code, String detail) {
    enter(file).statusCode(400).body("code", equalTo(code)).body("detail", containsString(detail));
  }

  @Test
  void other_encodings_and_types_are_refused() {
    byte[] latin = (HEADER + BARREL.replace("clean", "très")).getBytes(StandardCharsets.ISO_8859_1);
    asOwner()
        .header("Idempotency-Key", UUID.randomUUID())
        .contentType("text/csv")
        .body(latin)
        .post("/api/opening-stock")
        .then()
        .statusCode(400)
        .body("code", equalTo("broken-csv"));
    asOwner()
        .header("Idempotency-Key", UUID.randomUUID())
        .contentType("application/json")
        .body("{}")
        .post("/api/opening-stock")
        .then()
        .statusCode(415);
  }

  @Test
  void a_line_with_too_few_cells_is_named() {
    enter(HEADER + "barrel,TAG\r\n").statusCode(400).body("errors.field", hasItems("line 2"));
  }

  private ValidatableResponse enter(String file) {
    return OpeningCsv.enter(file.replace("TAG", tag).replace("LOT", lot), UUID.randomUUID());
  }
}
