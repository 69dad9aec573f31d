package org.barreltally;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Finds what REST Assured's own JsonPath finds (which compiles a Groovy script to look). */
class SimplePathTest {

  private static final JsonPath JSON =
      JsonPath.from(
          """
          {"code": "short", "count": 3, "total": {"amount": 12.50, "none": null}, "held": false,
           "big": 12345678901, "empty": [],
           "items": [{"id": "a", "lots": ["x", "y"], "n": {"value": 1.5}},
                     {"id": "b", "lots": [], "n": {"value": 2}, "more": "z"}]}
          """);
  private static final Object ROOT = JSON.get("$");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "code",
        "count",
        "held",
        "big",
        "missing",
        "total.amount",
        "total.amount.toDouble()",
        "count.toDouble()",
        "total.none",
        "total.missing",
        "items",
        "items.size()",
        "items.id",
        "items.more",
        "items.n.value",
        "items.lots",
        "items[0].id",
        "items[1].lots",
        "items[0].lots[1]",
        "items[0].lots.size()",
        "empty",
        "empty.id",
        "empty.size()"
      })
  void finds_the_same(String path) {
    assertEquals(
        Optional.of(new SimplePath.Found(JSON.get(path))), SimplePath.in(ROOT, path), path);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "items.find { it.id == 'a' }.lots",
        "items[2].id",
        "items[-1].id",
        "missing.further",
        "items[0].id.length()",
        "code.size()",
        "code.class",
        "items*.id",
        "code.x",
        ""
      })
  void leaves_what_is_not_simple_to_it(String path) {
    assertTrue(SimplePath.in(ROOT, path).isEmpty(), path);
  }

  @Test
  void a_list_of_other_things_than_records_is_left_to_it() {
    Object root = JsonPath.from("{\"items\": [1, {\"id\": 2}]}").get("$");
    assertTrue(SimplePath.in(root, "items.id").isEmpty());
  }

  @Test
  void the_quick_json_path_answers_as_the_other_does() {
    JsonPath quick =
        new QuickJsonPath("{\"total\": {\"amount\": 12.50}, \"items\": [{\"id\": \"a\"}]}");
    assertEquals("12.5", quick.getString("total.amount"));
    assertEquals(12.5, quick.getDouble("total.amount"));
    assertNull(quick.getString("total.missing"));
    assertEquals(List.of("a"), quick.getList("items.id"));
    assertEquals("a", quick.getString("items.find { it.id == 'a' }.id"));
    assertEquals("a", quick.setRootPath("items[0]").getString("id"));
  }
}
