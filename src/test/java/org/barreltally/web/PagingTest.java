package org.barreltally.web;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class PagingTest {

  @Test
  void the_parts_of_a_list_follow_each_other_to_its_end() {
    String next =
        Ask.asOwner()
            .get("/api/tried/paged?limit=4")
            .then()
            .body("items", contains(1, 2, 3, 4))
            .extract()
            .path("next");
    Ask.asOwner()
        .get("/api/tried/paged?limit=4&after=" + next)
        .then()
        .body("items", contains(5, 6, 7))
        .body("next", nullValue());
  }

  @Test
  void a_full_last_part_names_no_next() {
    Ask.asOwner().get("/api/tried/paged?limit=7").then().body("next", nullValue());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "501", "-1", "ten", "1.0", "99999999999"})
  void a_limit_out_of_range_is_named(String limit) {
    Ask.asOwner()
        .get("/api/tried/paged?limit=" + limit)
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo("limit"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "MTox*", "MjpmaXZl", "MTpmaXZl", "____"})
  void a_cursor_that_is_none_of_ours_is_named(String after) {
    Ask.asOwner()
        .get("/api/tried/paged?after=" + after)
        .then()
        .statusCode(400)
        .body("errors[0].field", equalTo("after"));
  }
}
