package org.barreltally.stock;

import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Rows of an opening stock file, right in every cell; TAG and LOT stand for a test's own. */
final class OpeningCsv {

  static final String HEADER =
      "kind,tag,lot,season,filledOn,material,gross,tare,dip,dipAt,brix,brixAt,instrument,"
          + "transmittance,taste,place,container,count,packedOn\r\n";

  static final String BARREL =
      "barrel,TAG,,2024,2024-03-22,stainless,486.5 lb,42 lb,,,66.9,,,62,clean,,,,\r\n";

  static final String JARS =
      "jars,,LOT,2023 2024,,,,,,,67.1,,,41,clean,cool-room,PT,36,2024-06-20\r\n";

  private OpeningCsv() {}

  static ValidatableResponse enter(String file, UUID key) {
    return ShelfFixture.asOwner()
        .header("Idempotency-Key", key)
        .contentType("text/csv")
        .body(file.getBytes(StandardCharsets.UTF_8))
        .post("/api/opening-stock")
        .then();
  }
}
