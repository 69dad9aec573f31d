package org.barreltally.errands;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import java.util.Map;
import java.util.UUID;
import org.barreltally.start.FolderDatabase;
import org.barreltally.start.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed while it enters a long file: none of it stands in the book afterwards. */
class ErrandBrokenOffIT {

  private static final int BARRELS = 4_000;

  @TempDir Path folder;

  private static RequestSpecification owner(Program program) {
    return given().port(program.port()).header("Authorization", Program.LOGIN);
  }

  private static String file() {
    StringBuilder file =
        new StringBuilder(
            "kind,tag,season,filledOn,material,gross,tare,brix,transmittance,taste\n");
    for (int n = 1; n <= BARRELS; n++) {
      file.append("barrel,K-").append(n);
      file.append(",2025,2025-03-22,plastic,486.5 lb,42 lb,66.9,62,clean\n");
    }
    return file.toString();
  }

  @Test
  void nothing_is_half_in_the_book() throws Exception {
    Map<String, String> settings = Program.ownBook(folder);
    String id;
    try (Program program = Program.start(settings).awaitReady()) {
      id =
          owner(program)
              .contentType("text/csv")
              .header("Idempotency-Key", UUID.randomUUID())
              .body(file())
              .post("/api/errands/opening-stock/from-file")
              .then()
              .statusCode(202)
              .extract()
              .path("id");
      Program.await(() -> done(program, id) > 0);
      int done = done(program, id);
      assertTrue(done < BARRELS, "killed in the middle, at " + done);
      program.kill();
    }
    try (Program again = Program.start(settings).awaitReady()) {
      owner(again).get("/api/barrels/K-1").then().statusCode(404);
      assertEquals(0, owner(again).get("/api/barrels").jsonPath().getList("items").size());
      assertEquals("at-work", state(again, id), "it might still be another copy's");
      FolderDatabase.asked(
          folder,
          "UPDATE errands SET seen_at = seen_at - interval '1 minute' WHERE id = '%s' RETURNING id"
              .formatted(id));
      assertEquals("broken-off", state(again, id), "nobody gave a sign for a minute");
    }
  }

  private static int done(Program program, String id) {
    return owner(program).get("/api/errands/" + id).jsonPath().getInt("stepsDone");
  }

  private static String state(Program program, String id) {
    return owner(program).get("/api/errands/" + id).jsonPath().getString("state");
  }
}
