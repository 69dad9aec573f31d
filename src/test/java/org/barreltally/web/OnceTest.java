package org.barreltally.web;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class OnceTest {

  private static final String DRAW =
      "{\"from\":\"B-01\",\"weight\":{\"value\":1.50,\"unit\":\"lb\"}}";

  @Test
  void many_at_once_with_one_id_do_it_once_and_all_get_its_answer() throws Exception {
    String key = UUID.randomUUID().toString();
    int before = Tried.DONE.get();
    Set<String> answers = new HashSet<>();
    ExecutorService threads = Executors.newFixedThreadPool(32);
    try {
      List<Callable<String>> asking = new ArrayList<>();
      for (int i = 0; i < 32; i++) {
        asking.add(() -> whole(ask(key, DRAW)));
      }
      for (Future<String> answer : threads.invokeAll(asking)) {
        answers.add(answer.get());
      }
    } finally {
      threads.shutdownNow();
    }
    assertEquals(before + 1, Tried.DONE.get());
    assertEquals(1, answers.size(), answers.toString());
  }

  @Test
  void a_repeat_gets_the_first_answer_byte_for_byte() {
    String key = UUID.randomUUID().toString();
    Response first = ask(key, DRAW);
    first.then().statusCode(201);
    int done = Tried.DONE.get();
    assertEquals(whole(first), whole(ask(key, DRAW)));
    assertEquals(done, Tried.DONE.get());
  }

  @Test
  void the_same_content_in_another_spelling_is_a_repeat() {
    String key = UUID.randomUUID().toString();
    String other =
        "{ \"weight\": {\"unit\": \"lb\", \"value\": 15e-1},\n \"from\": \"B\\u002d01\" }";
    assertEquals(whole(ask(key, DRAW)), whole(ask("\"" + key + "\"", other)));
  }

  @Test
  void another_content_or_address_under_a_used_id_is_refused() {
    String key = UUID.randomUUID().toString();
    ask(key, DRAW);
    ask(key, DRAW.replace("1.50", "1.51"))
        .then()
        .statusCode(409)
        .body("code", equalTo("id-reused"));
    Ask.json(DRAW)
        .header("Idempotency-Key", key)
        .post("/api/tried/once-too")
        .then()
        .statusCode(409)
        .body("code", equalTo("id-reused"));
  }

  @Test
  void a_refusal_is_not_remembered() {
    String key = UUID.randomUUID().toString();
    String draw = DRAW.replace("B-01", "refuse");
    if (Tried.DONE.get() % 2 == 1) {
      ask(UUID.randomUUID().toString(), DRAW);
    }
    ask(key, draw).then().statusCode(400).body("code", equalTo("invalid-field"));
    ask(key, draw).then().statusCode(201);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "7", "not-a-uuid", "00000000-0000-0000-0000-00000000000g"})
  void an_id_that_is_no_uuid_is_refused(String key) {
    ask(key, DRAW).then().statusCode(400).body("code", equalTo("id-missing"));
  }

  @Test
  void a_missing_id_is_refused() {
    Ask.json(DRAW)
        .post("/api/tried/once")
        .then()
        .statusCode(400)
        .body("code", equalTo("id-missing"));
  }

  @Test
  void other_ids_are_other_requests() {
    assertNotEquals(
        whole(ask(UUID.randomUUID().toString(), DRAW)),
        whole(ask(UUID.randomUUID().toString(), DRAW)));
  }

  private static Response ask(String key, String draw) {
    return Ask.json(draw).header("Idempotency-Key", key).post("/api/tried/once");
  }

  private static String whole(Response response) {
    return response.statusCode() + " " + response.header("Location") + " " + response.asString();
  }
}
