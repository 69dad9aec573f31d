package org.barreltally.documents;

import java.nio.file.*;
import java.util.List;
import org.barreltally.measure.*;
import org.junit.jupiter.api.Test;

class LookTest {
  @Test
  void look() throws Exception {
    Path out = Path.of("/tmp/papers-look");
    for (LabelSheet s : LabelSheets.known()) {
      Files.write(
          out.resolve(s.code() + ".pdf"),
          LabelFixture.pdf(LabelFixture.anyLabel(), s.code(), 2, s.labelsPerPage()));
      for (Quantity q :
          List.of(
              Quantity.of(8, Unit.FLOZ),
              Quantity.of(1, Unit.QT),
              Quantity.of(1, Unit.GAL),
              Quantity.of(250, Unit.ML),
              Quantity.of(5, Unit.GAL))) {
        try {
          Files.write(
              out.resolve(s.code() + "-" + q.toString().replace(' ', '_') + ".pdf"),
              LabelFixture.pdf(
                  LabelFixture.label(
                      q,
                      "Ζαχαρόσπιτο Κленовый Thistle Ridge & Daughters Sugarhouse",
                      List.of("412 Ridge Lane", "Millbrook Hollow, VT 05000"),
                      "https://farm.example/lot/P260620-1"),
                  s.code(),
                  1,
                  3));
        } catch (org.barreltally.refusal.Refusal r) {
          System.out.println(s.code() + " " + q + " " + r.code() + " " + r.errors());
        }
      }
    }
    Files.write(
        out.resolve("tag.pdf"),
        Papers.tag(
            new TagText(
                false,
                "B-01",
                List.of(
                    new TagText.Line("g", "Amber, rich taste"),
                    new TagText.Line("g", "Lot S26-001 · filled 2026-03-14"),
                    new TagText.Line("g", "Crop of 2026 · stainless"),
                    new TagText.Line("g", "Net 444.5 lb (201.6 kg) on 2026-05-01"),
                    new TagText.Line("g", "66.9 °Bx · 62 %Tc"),
                    new TagText.Line("g", "Thistle Ridge Sugarhouse"),
                    new TagText.Line("g", "412 Ridge Lane, Millbrook Hollow, VT 05000")),
                "B-01",
                "S26-001")));
    Files.write(
        out.resolve("hold.pdf"),
        Papers.tag(
            new TagText(
                true,
                "HOLD",
                List.of(
                    new TagText.Line("g", "Lot P260620-1"),
                    new TagText.Line(
                        "g",
                        "Held since 2026-06-21: sour smell in three pints of the first case, Ada tasted twice and wants a second taster before anything leaves the cool room"),
                    new TagText.Line(
                        "g", "Do not draw, sell, give away or send it until it is released."),
                    new TagText.Line("g", "Tag written 2026-06-22")),
                "P260620-1",
                "P260620-1")));
    long t = System.nanoTime();
    byte[] b = LabelFixture.pdf(LabelFixture.anyLabel(), "letter-3x10", 1, 5000);
    System.out.println("5000 labels " + (System.nanoTime() - t) / 1e6 + " ms " + b.length);
  }
}
