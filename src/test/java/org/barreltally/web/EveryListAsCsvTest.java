package org.barreltally.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barreltally.Owner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Whatever answers items in JSON answers the same as CSV, and the description says so. The lists
 * are found by asking every GET of the description, so a new one is held to this without a word.
 */
@QuarkusTest
class EveryListAsCsvTest {

  private static final ObjectMapper JSON =
      new ObjectMapper()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .configure(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES, false)
          .setNodeFactory(JsonNodeFactory.withExactBigDecimals(true));

  private final List<String> faults = new ArrayList<>();
  private final Map<String, Integer> rows = new TreeMap<>();

  @BeforeEach
  void something_stands_in_the_lists() {
    String tag = Owner.newTag("CSV");
    Owner.posts("/api/barrels", Owner.barrel(tag, 2024, "2024-03-14", 250, 42, 66.9, 62))
        .statusCode(201);
    Owner.posts(
            "/api/shows",
            "{'name': 'Zoë’s \\\"Apple\\\", Day', 'town': 'Lower Wend', 'starts': '2031-10-03', 'ends': '2031-10-04',"
                + " 'booth': {'fee': {'amount': 120.50, 'currency': 'USD'}, 'tables': [{'lengthInches': 96, 'depthInches': 30, 'tiers': 3}]}}")
        .statusCode(201);
    Owner.asks()
        .contentType("application/json")
        .body("{\"name\": \"a reader\"}")
        .post("/api/tokens");
  }

  @Test
  void every_list_has_as_many_rows_as_items_and_loses_nothing() throws Exception {
    JsonNode paths =
        JSON.readTree(Owner.asks().get("/openapi?format=json").asString()).get("paths");
    for (Map.Entry<String, JsonNode> path : (Iterable<Map.Entry<String, JsonNode>>) paths::fields) {
      JsonNode get = path.getValue().get("get");
      boolean ofTests = path.getKey().startsWith("/api/tried/"); // CsvTest asks those
      if (get != null && !ofTests && get.at("/responses/200/content").has("application/json")) {
        compare(path.getKey(), get);
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(rows.size() >= 30, "lists compared: " + rows);
    assertTrue(rows.get("/api/barrels") > 0 && rows.get("/api/shows") > 0, "" + rows);
  }

  private void compare(String path, JsonNode get) throws Exception {
    boolean said = get.at("/responses/200/content").has("text/csv");
    String address = filled(path);
    Response json = Owner.asks().get(address);
    Response csv = Owner.asks().accept("text/csv").get(address);
    if (json.statusCode() != 200) {
      if (said && csv.statusCode() != json.statusCode()) {
        faults.add(address + " " + json.statusCode() + " in JSON, " + csv.statusCode() + " as CSV");
      }
      return;
    }
    boolean list = JSON.readTree(json.asString()).path("items").isArray();
    if (list != said) {
      faults.add(path + (list ? " is not said to answer CSV" : " is said to answer CSV"));
    } else if (list) {
      compareRows(address, path, csv);
    } else if (csv.statusCode() != 406) {
      faults.add(path + " is no list and answers " + csv.statusCode() + " to text/csv");
    }
  }

  private void compareRows(String address, String path, Response csv) throws Exception {
    List<JsonNode> items = items(address);
    if (csv.statusCode() != 200 || !csv.contentType().equals("text/csv;charset=UTF-8")) {
      faults.add(address + " answers " + csv.statusCode() + " " + csv.contentType());
      return;
    }
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(csv.asString()), format)) {
      List<CSVRecord> found = parser.getRecords();
      rows.put(path, found.size());
      if (found.size() != items.size() || parser.getHeaderNames().isEmpty()) {
        faults.add(address + " has " + items.size() + " items and " + found.size() + " rows");
        return;
      }
      for (int i = 0; i < found.size(); i++) {
        for (Map.Entry<String, JsonNode> leaf : leaves(items.get(i)).entrySet()) {
          compareCell(address, leaf.getKey(), leaf.getValue(), found.get(i));
        }
      }
    }
  }

  private void compareCell(String address, String name, JsonNode value, CSVRecord row) {
    if (!row.isMapped(name)) {
      compareWithin(address, name, value, row);
      return;
    }
    String cell = row.get(name).replaceFirst("^'('*[=+\\-@\\t\\r\\n＝＋－＠])", "$1");
    boolean same =
        value.isNumber()
            ? new java.math.BigDecimal(cell).compareTo(value.decimalValue()) == 0
            : value.isArray() ? value.isEmpty() == cell.isEmpty() : cell.equals(value.asText());
    if (!same) {
      faults.add(address + " " + name + ": " + value + " became " + cell);
    }
  }

  /** What may be a number here and a record there stands whole in one cell. */
  private void compareWithin(String address, String name, JsonNode value, CSVRecord row) {
    for (int dot = name.lastIndexOf('.'); dot > 0; dot = name.lastIndexOf('.', dot - 1)) {
      String whole = name.substring(0, dot);
      if (row.isMapped(whole)) {
        try {
          String inside = "/" + name.substring(dot + 1).replace('.', '/');
          if (!JSON.readTree(row.get(whole)).at(inside).asText().equals(value.asText())) {
            faults.add(address + " " + name + ": " + value + " is not in " + row.get(whole));
          }
        } catch (java.io.IOException e) {
          faults.add(address + " " + name + " is no JSON in " + row.get(whole));
        }
        return;
      }
    }
    faults.add(address + " has no column " + name);
  }

  /** Every value of an item by the names that lead to it; a list is one value. */
  private static Map<String, JsonNode> leaves(JsonNode item) {
    Map<String, JsonNode> leaves = new HashMap<>();
    walk("", item, leaves);
    return leaves;
  }

  private static void walk(String name, JsonNode node, Map<String, JsonNode> leaves) {
    if (!node.isObject()) {
      leaves.put(name.isEmpty() ? "item" : name, node);
      return;
    }
    node.fields()
        .forEachRemaining(
            f -> walk(name.isEmpty() ? f.getKey() : name + "." + f.getKey(), f.getValue(), leaves));
  }

  private static List<JsonNode> items(String address) throws Exception {
    List<JsonNode> items = new ArrayList<>();
    JsonNode page = JSON.readTree(Owner.asks().get(address).asString());
    while (true) {
      page.get("items").forEach(items::add);
      if (!page.hasNonNull("next")) {
        return items;
      }
      page =
          JSON.readTree(
              Owner.asks().queryParam("after", page.get("next").asText()).get(address).asString());
    }
  }

  /** The path with the identity of the first item of the list above it, if there is one. */
  private static String filled(String path) throws Exception {
    String address = path;
    while (address.contains("{")) {
      int brace = address.indexOf('{');
      String above = address.substring(0, brace - 1);
      String text = Owner.asks().get(above).asString();
      JsonNode first = text.startsWith("{") ? JSON.readTree(text).at("/items/0") : null;
      String identity = UUID.randomUUID().toString();
      for (String name : List.of("id", "tag", "lot", "code", "year", "name")) {
        if (first != null && first.has(name)) {
          identity = first.get(name).asText();
          break;
        }
      }
      address = above + "/" + identity + address.substring(address.indexOf('}') + 1);
    }
    return address;
  }
}
