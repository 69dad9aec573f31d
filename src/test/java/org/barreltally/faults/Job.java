package org.barreltally.faults;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;

/** What is asked next: barrels, runs, jars carried and dropped, of what is known to be there. */
final class Job {

  private static final String BARREL =
      """
      {"tag": "%s", "season": 2026, "filledOn": "2026-03-14", "material": "stainless",
       "weighing": {"gross": {"value": 486.5, "unit": "lb"}, "tare": {"value": 42.0, "unit": "lb"}},
       "density": {"reading": {"value": 66.9, "unit": "Brix"}, "temperature": {"value": 68, "unit": "degF"},
                   "instrument": "refractometer"},
       "transmittance": 62, "taste": "clean"}
      """;

  private static final String RUN =
      """
      {"on": "2026-06-20", "draws": [{"barrel": "%s", "weight": {"value": 30, "unit": "lb"}}],
       "fillTemperature": {"value": 185, "unit": "degF"},
       "fills": [{"container": "PT", "count": %d}], "transmittance": 60, "taste": "clean"}
      """;

  private static final String CARRY =
      """
      {"from": "cool-room", "to": "barrel-room", "container": "PT", "lot": "%s", "count": 2, "reason": "room"}
      """;

  private static final String DROP =
      """
      {"place": "cool-room", "container": "PT", "lot": "%s", "count": 1, "cause": "broken"}
      """;

  private final AtomicInteger tags = new AtomicInteger();
  private final List<String> barrels = Collections.synchronizedList(new ArrayList<>());
  private final List<String> lots = Collections.synchronizedList(new ArrayList<>());

  Wish next(Random random) {
    int what = random.nextInt(10);
    if (what < 2 || barrels.isEmpty()) {
      String tag = "F-" + tags.incrementAndGet();
      return new Wish(Wish.Kind.FILL, "/api/barrels", BARREL.formatted(tag), 1, tag);
    }
    if (what < 6 || lots.isEmpty()) {
      int jars = 6 + random.nextInt(10);
      return new Wish(
          Wish.Kind.CAN, "/api/canning/runs", RUN.formatted(one(barrels, random), jars), jars, "");
    }
    String lot = one(lots, random);
    return what < 8
        ? new Wish(Wish.Kind.CARRY, "/api/stock/relocations", CARRY.formatted(lot), 2, lot)
        : new Wish(Wish.Kind.WRITE_OFF, "/api/stock/write-offs", DROP.formatted(lot), 1, lot);
  }

  private static String one(List<String> of, Random random) {
    return of.get(random.nextInt(of.size()));
  }

  /** What was acknowledged can be drawn from afterwards. */
  void settled(Wish wish) {
    if (!wish.isAcknowledged()) {
      return;
    }
    if (wish.kind == Wish.Kind.FILL) {
      barrels.add(wish.about);
    } else if (wish.kind == Wish.Kind.CAN) {
      try {
        lots.add(new ObjectMapper().readTree(wish.answer).get("lot").asText());
      } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
        throw new AssertionError(wish.answer, e);
      }
    }
  }
}
