package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.documents.PagesText.Block;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.PickPlan.Take;
import org.barreltally.gifts.PostalLines;
import org.junit.jupiter.api.Test;

/** The papers of a gift order of 60, read back by another library than the one that drew them. */
class GiftPapersTest {

  private static final int RECIPIENTS = 60;
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 7);

  private final GiftOrder order = InventedGifts.order(RECIPIENTS, true);

  private static List<String> pages(byte[] pdf) throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(document));
      }
    }
    return pages;
  }

  private static byte[] drawn(int slots, List<Block> blocks) {
    return Papers.pages(new PagesText(Paper.LETTER, "Paper", slots, blocks));
  }

  private byte[] slips() {
    GiftSlips slips =
        new GiftSlips(order, InventedGifts.maker(), InventedGifts.words(), GiftPapers.HOME);
    return drawn(2, order.lines().stream().map(slips::of).toList());
  }

  private byte[] bill() {
    return drawn(1, bill(order).bill(TODAY));
  }

  private static GiftBillPaper bill(GiftOrder order) {
    return new GiftBillPaper(order, InventedGifts.maker(), InventedGifts.words(), GiftPapers.HOME);
  }

  private static byte[] pickList(GiftOrder order, List<Take> takes) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.of(GiftPickList.head("Pick list", "Order")));
    blocks.addAll(
        new GiftPickList(order, order.lines(), InventedGifts.words(), code -> "The " + code)
            .blocks(takes));
    return drawn(1, blocks);
  }

  @Test
  void slips_stand_two_on_a_page_each_whole_and_bear_no_price() throws IOException {
    List<String> pages = pages(slips());
    assertEquals(RECIPIENTS / 2, pages.size());
    for (int n = 1; n <= RECIPIENTS; n++) {
      String page = pages.get((n - 1) / 2);
      assertTrue(page.contains("No. " + n + ","), page);
      assertTrue(page.contains(order.person(n).name()), page);
    }
    for (String page : pages) {
      assertFalse(page.matches("(?s).*(\\$|USD|22\\.00|28\\.00|12\\.50).*"), page);
    }
  }

  @Test
  void a_substitute_is_said_on_its_slip_alone() throws IOException {
    List<String> pages = pages(slips());
    long said = pages.stream().filter(page -> page.contains("in place of")).count();
    long swapped = order.jars().stream().filter(jars -> !jars.jar().equals(jars.wanted())).count();
    assertTrue(swapped > 0);
    assertEquals(swapped, said);
    assertTrue(
        pages
            .get(3)
            .replaceAll("\\s+", " ")
            .contains("Amber, rich taste, in place of Half-pint jug, Golden"),
        pages.get(3));
  }

  @Test
  void a_pick_list_goes_by_place_and_repeats_its_heads_on_every_page() throws IOException {
    GiftOrder waiting = InventedGifts.order(RECIPIENTS, false);
    List<String> pages =
        pages(
            pickList(
                waiting,
                List.of(
                    new Take("cool-room", InventedGifts.GOLDEN, "P260620-1", 34),
                    new Take("barn", InventedGifts.DARK, "P260902-1", 60),
                    new Take(null, InventedGifts.PINT, null, 20))));
    String all = String.join("\n", pages);
    assertTrue(all.indexOf("The cool-room") < all.indexOf("The barn"));
    assertTrue(all.contains("Not to be found"));
    assertTrue(all.contains("Two-jar carton"));
    assertTrue(pages.size() > 2);
    for (int page = 1; page < pages.size(); page++) {
      assertTrue(pages.get(page).contains("No."), "heads on page " + (page + 1));
      assertTrue(pages.get(page).contains((page + 1) + " of " + pages.size()));
    }
    for (int n = 1; n <= RECIPIENTS; n++) {
      int number = n;
      assertEquals(
          1,
          pages.stream()
              .flatMap(String::lines)
              .filter(
                  line -> line.startsWith(number + " " + order.person(number).name().split(" ")[0]))
              .count(),
          "recipient " + n);
    }
  }

  @Test
  void a_bill_adds_up_and_says_deposit_and_balance() throws IOException {
    // By hand: 20 Breakfasts at 28 and 40 Tasters at 22 are 560 + 880 = 1440; 54 are posted at
    // 12.50, 675; together 2115, less 237.75 leave 1877.25.
    String text = String.join("\n", pages(bill()));
    assertTrue(text.contains("880.00 USD"), text);
    assertTrue(text.contains("560.00 USD"), text);
    assertTrue(text.contains("675.00 USD"), text);
    assertTrue(text.contains("2115.00 USD"), text);
    assertTrue(text.contains("237.75 USD"), text);
    assertTrue(text.contains("1877.25 USD"), text);
    String receipt = String.join("\n", pages(drawn(1, bill(order).receipt(TODAY))));
    assertTrue(receipt.contains("2026-11-20") && receipt.contains("1877.25 USD"), receipt);
  }

  @Test
  void labels_fill_a_part_used_sheet_and_go_on_to_the_next() throws IOException {
    LabelSheet sheet =
        LabelSheets.known().stream()
            .filter(known -> known.code().equals("letter-3x10"))
            .findFirst()
            .orElseThrow();
    List<AddressText> labels =
        order.lines().stream()
            .map(
                line ->
                    new AddressText(
                        "recipients[" + (line.n() - 1) + "].address",
                        PostalLines.of(
                            order.person(line.n()).name(),
                            order.person(line.n()).address(),
                            GiftPapers.HOME)))
            .toList();
    byte[] pdf = Papers.addresses(labels, sheet, 4);
    List<String> pages = pages(pdf);
    assertEquals(3, pages.size(), "27, 30 and 3 labels");
    assertTrue(pages.get(0).contains("Fernby VT 05999"));
    assertTrue(pages.get(0).contains("GERMANY"));
    assertFalse(pages.get(0).contains("UNITED STATES"));
    // The first three places stay blank; the fourth is the left one of the second row.
    Page first = Page.of(pdf, 1);
    assertTrue(first.part(0, 0.5, 8.5, 1).isBlank());
    assertFalse(first.part(0.1875, 1.5, 2.625, 1).isBlank());
  }

  @Test
  void cards_stand_four_on_a_page() throws IOException {
    List<CardText> cards =
        order.lines().stream()
            .map(GiftLine::n)
            .filter(n -> order.person(n).card() != null)
            .map(n -> new CardText(n, "card", order.person(n).card()))
            .toList();
    List<String> pages = pages(Papers.cards(cards, Paper.A4));
    assertEquals((cards.size() + 3) / 4, pages.size());
    assertTrue(String.join(" ", pages).replaceAll("\\s+", " ").contains("the sap ran late"));
  }

  @Test
  void a_character_without_a_picture_is_named_with_its_card() {
    CharacterNotCovered refused =
        assertThrows(
            CharacterNotCovered.class,
            () ->
                Papers.cards(
                    List.of(new CardText(3, "recipients[2].card", "Joy \uD83C\uDF41")),
                    Paper.LETTER));
    assertEquals("recipients[2].card", refused.errors().get(0).field());
  }

  @Test
  void a_very_long_name_keeps_no_list_from_being_printed() throws IOException {
    GiftOrder odd = InventedGifts.order(1, true);
    GiftOrder long_ =
        new GiftOrder(
            odd.head(),
            odd.buyer(),
            odd.lines(),
            Map.of(
                1, new org.barreltally.gifts.Person("W".repeat(80), odd.person(1).address(), null)),
            odd.boxes(),
            odd.promises(),
            odd.jars(),
            odd.done(),
            odd.payments());
    assertEquals(1, pages(pickList(long_, List.of())).size());
  }
}
