package org.barreltally.gifts;

import static org.barreltally.Owner.posts;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;

/** The papers of an order as a browser gets them. */
@QuarkusTest
class GiftPapersOverRestTest {

  private static final List<String> PAPERS =
      List.of(
          "pick-list",
          "packing-slips",
          "greeting-cards",
          "address-labels",
          "bill",
          "receipt",
          "lots");

  @Inject GiftShelf shelf;

  private static String text(String path) throws IOException {
    byte[] pdf =
        Owner.asks()
            .get(path)
            .then()
            .statusCode(200)
            .contentType("application/pdf")
            .header("Content-Disposition", containsString("inline; filename="))
            .extract()
            .asByteArray();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void every_paper_is_drawn_and_the_pick_list_follows_the_picking() throws IOException {
    String size = GiftShelf.newSize("8", "floz");
    String lot = shelf.lot(size, "golden", 3, "2024-06-20");
    String box = GiftShelf.box("Papers " + size, "22.00", size + " golden 1");
    String order =
        "/api/gift-orders/"
            + GiftShelf.order(
                GiftShelf.posted(1, box, "12.50"),
                GiftShelf.posted(2, box, "12.50"),
                GiftShelf.without(3, box, "collect"));
    posts(order + "/reserve", "{}").statusCode(200);
    String before = text(order + "/pick-list.pdf");
    assertTrue(before.contains("Cool room") && before.contains(lot), before);
    assertTrue(before.contains("Recipient 3 Quillfeather"), before);

    posts(order + "/pick", "{}").statusCode(200);
    String after = text(order + "/pick-list.pdf");
    assertTrue(after.contains("on the gift shelf") && !after.contains("Cool room"), after);
    for (String paper : PAPERS) {
      assertFalse(text(order + "/" + paper + ".pdf").isBlank(), paper);
    }
    String slip = text(order + "/packing-slips.pdf?recipients=2");
    assertTrue(slip.contains("Recipient 2") && !slip.contains("Recipient 1"), slip);
    assertTrue(slip.contains(lot) && !slip.contains("22.00"), slip);
    String label = text(order + "/address-labels.pdf?sheet=a4-3x8&startAt=2&home=CA");
    assertTrue(label.contains("Fernby VT 05999") && label.contains("UNITED STATES"), label);
    assertEquals(2, label.split("UNITED STATES", -1).length - 1, "the collected one has none");
  }

  @Test
  void what_cannot_be_drawn_is_refused_by_name() {
    String box = GiftShelf.box(Owner.newTag("Refused papers "), "22.00", "HP golden 1");
    String order = "/api/gift-orders/" + GiftShelf.order(GiftShelf.without(1, box, "collect"));
    refused(order + "/address-labels.pdf", 409, "nothing-to-print");
    refused(order + "/greeting-cards.pdf", 409, "nothing-to-print");
    refused(order + "/address-labels.pdf?sheet=none", 400, "unknown-label-sheet");
    refused(order + "/packing-slips.pdf?recipients=2", 404, "unknown-recipient");
    refused(order + "/packing-slips.pdf?recipients=one", 400, "invalid-field");
    refused(order + "/bill.pdf?home=Canada", 400, "invalid-field");
    refused(
        "/api/gift-orders/01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d/bill.pdf",
        404,
        "unknown-gift-order");
  }

  private static void refused(String path, int status, String code) {
    Owner.asks().get(path).then().statusCode(status).body("code", equalTo(code));
  }
}
