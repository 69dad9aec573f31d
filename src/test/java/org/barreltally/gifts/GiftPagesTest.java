package org.barreltally.gifts;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.Owner;
import org.barreltally.PageReader;
import org.barreltally.SoundBook;
import org.barreltally.people.PersonFixture;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Gift boxes and orders as pages. */
@QuarkusTest
class GiftPagesTest {

  private static final String NEW = "form[action='/gift-orders/new']";

  @Inject GiftShelf shelf;
  @Inject PersonFixture people;

  private final String unique = UUID.randomUUID().toString().substring(0, 8);
  private final String soon = LocalDate.now().plusDays(9).toString();

  private String size() {
    return GiftShelf.newSize("8", "floz");
  }

  private long orders() {
    return shelf.number("SELECT count(*) FROM gift_orders");
  }

  private static String id(Response sent) {
    String at = sent.then().statusCode(303).extract().header("Location");
    return at.substring(at.lastIndexOf('/') + 1);
  }

  @Test
  void a_box_is_made_with_a_substitute_in_the_second_row_alone() {
    PageReader owner = PageReader.owner();
    String size = size();
    Document page = owner.reads("/gift-boxes/new");
    Response refused =
        owner.sends(
            page,
            "form[action='/gift-boxes/new']",
            "name",
            "Wooden box " + unique,
            "contents[1].container",
            size,
            "contents[1].grade",
            "golden",
            "contents[1].count",
            "0");
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "price").contains("price of one box"));
    assertTrue(PageReader.beside(refused, "contents[0].count").contains("1 to 48"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals("Wooden box " + unique, again.selectFirst("[name=name]").val());
    assertEquals(size, again.selectFirst("[name='contents[0].container'] option[selected]").val());
    String id =
        id(
            owner.sends(
                again,
                "form[action='/gift-boxes/new']",
                "price",
                "$21.50",
                "contents[0].count",
                "2",
                "contents[0].substitutes[1].container",
                size,
                "contents[0].substitutes[1].grade",
                "amber"));
    Owner.reads("/api/gift-boxes/" + id)
        .body("price.amount", equalTo(21.5f))
        .body("contents[0].count", equalTo(2))
        .body("contents[0].substitutes.grade", equalTo(List.of("amber")));
    assertTrue(owner.reads("/gift-boxes").text().contains("Wooden box " + unique));
    Document box = owner.reads("/gift-boxes/" + id);
    assertTrue(box.text().contains("nobody has weighed one yet"));
    owner
        .sends(box, "form[action='/gift-boxes/" + id + "']", "weight", "3.1 lb")
        .then()
        .statusCode(303);
    assertTrue(owner.reads("/gift-boxes/" + id).text().contains("One box was weighed"));
  }

  private String boxOf(String size) {
    return GiftShelf.box("Box " + unique, "20.00", size + " golden 1");
  }

  @Test
  void an_order_refused_keeps_what_was_typed_and_says_beside_the_field_what_to_mend() {
    PageReader owner = PageReader.owner();
    boxOf(size());
    long before = orders();
    Response refused =
        owner.sends(
            owner.reads("/gift-orders/new"),
            NEW,
            "buyer.name",
            "Hesper " + unique,
            "recipients[1].name",
            "Aunt <Ottilie>",
            "recipients[1].box",
            "Box " + unique,
            "recipients[1].sendBy",
            soon);
    assertEquals(400, refused.statusCode());
    assertTrue(PageReader.beside(refused, "recipients[0].address").contains("needs an address"));
    assertFalse(refused.asString().contains("<Ottilie>"));
    Document again = Jsoup.parse(refused.asString());
    assertEquals("Aunt <Ottilie>", again.selectFirst("[name='recipients[0].name']").val());
    assertEquals(before, orders());
  }

  @Test
  void more_rows_keep_what_was_typed_and_store_nothing() {
    PageReader owner = PageReader.owner();
    long before = orders();
    Document page = owner.reads("/gift-orders/new");
    int rows = page.select("input[name$='.name'][name^=recipients]").size();
    Response more = owner.sends(page, NEW, "recipients[0].name", "Aunt Wilmet", "more", "yes");
    Document longer = Jsoup.parse(more.then().statusCode(200).extract().asString());
    assertTrue(longer.select("input[name$='.name'][name^=recipients]").size() > rows);
    assertEquals("Aunt Wilmet", longer.selectFirst("[name='recipients[0].name']").val());
    assertEquals(before, orders());
  }

  @Test
  void what_is_short_is_shown_before_promising_and_nothing_is_stored() {
    PageReader owner = PageReader.owner();
    String size = size();
    boxOf(size);
    shelf.lot(size, "golden", 1, "2024-06-01");
    long before = orders();
    Response seen =
        owner.sends(
            owner.reads("/gift-orders/new"),
            NEW,
            "buyer.name",
            "Hesper " + unique,
            "recipients[0].name",
            "Aunt Wilmet",
            "recipients[0].box",
            "Box " + unique,
            "recipients[0].count",
            "3",
            "recipients[0].delivery",
            "collect",
            "recipients[0].sendBy",
            soon,
            "outlook",
            "yes");
    String text = Jsoup.parse(seen.then().statusCode(200).extract().asString()).text();
    // 3 wanted, 1 stands there: 2 lack
    assertTrue(text.contains("Not all of it can be promised."), text);
    assertTrue(text.contains("Recipient 1: 2 × " + size), text);
    assertEquals(before, orders());
  }

  @Test
  void an_order_sent_twice_is_taken_once_and_goes_its_way_by_the_buttons() {
    PageReader owner = PageReader.owner();
    String size = size();
    boxOf(size);
    shelf.lot(size, "golden", 5, "2024-06-01");
    Document page = owner.reads("/gift-orders/new");
    String[] typed = {
      "buyer.name", "Hesper " + unique, "recipients[0].name", "Aunt Ottilie",
      "recipients[0].box", "Box " + unique, "recipients[0].sendBy", soon,
      "recipients[0].address.lines[0]", "4 Tarn Lane", "recipients[0].address.town", "Fernby",
      "recipients[0].address.region", "VT", "recipients[0].address.postcode", "05999",
      "recipients[0].postage", "12.50"
    };
    long before = orders();
    String id = id(owner.sends(page, NEW, typed));
    assertEquals(id, id(owner.sends(page, NEW, typed)));
    assertEquals(before + 1, orders());
    Owner.reads("/api/gift-orders/" + id)
        .body("recipients[0].address.country", equalTo("US"))
        .body("total.amount", equalTo(32.5f));

    String order = "/gift-orders/" + id;
    assertNull(owner.reads(order).selectFirst("button[name=next]"), "not reserved yet");
    owner.sends(owner.reads(order), what("reserve")).then().statusCode(303);
    press(owner, order, "pick 1");
    press(owner, order, "pack 1");
    Owner.reads("/api/gift-orders/" + id).body("recipients[0].state", equalTo("packed"));
    Response refused = owner.sends(owner.reads(order), what("pay"), "amount", "ten");
    assertEquals(400, refused.statusCode());
    assertTrue(besideMarked(refused, "f-pay-amount-message").contains("ten"));
    owner.sends(owner.reads(order), what("pay"), "amount", "12.50").then().statusCode(303);
    Owner.reads("/api/gift-orders/" + id).body("balance.amount", equalTo(20.0f));

    String recipient = order + "/recipients/1";
    owner
        .sends(owner.reads(recipient), what("send"), "carrier", "Parcel post 4711")
        .then()
        .statusCode(303);
    owner
        .sends(owner.reads(recipient), what("return"), "reason", "No such street")
        .then()
        .statusCode(303);
    Response found = owner.sends(owner.reads(recipient), what("inspect"), "lines[0].good", "3");
    assertEquals(400, found.statusCode());
    assertTrue(besideMarked(found, "f-inspect-lines").contains("must be what was in the parcel"));
    owner.sends(owner.reads(recipient), what("inspect")).then().statusCode(303);
    Owner.reads("/api/gift-orders/" + id)
        .body("recipients[0].state", equalTo("returned"))
        .body("recipients[0].awaitingInspection", equalTo(false));
    Response correct =
        owner.sends(owner.reads(recipient), what("correct"), "recipient.address.postcode", "X");
    assertTrue(
        besideMarked(correct, "f-correct-recipient-address-postcode-message").contains("postcode"));
    owner.sends(owner.reads(recipient), what("cancel"), "reason", "asked").then().statusCode(303);
    owner
        .sends(owner.reads(order + "/forget"), "form[action='" + order + "/forget']")
        .then()
        .statusCode(303);
    assertTrue(owner.reads(order).text().contains("name removed"));
    SoundBook.check();
  }

  private static String what(String what) {
    return "form:has(input[name=what][value=" + what + "])";
  }

  private static void press(PageReader owner, String order, String next) {
    Document page = owner.reads(order);
    assertNotNull(page.selectFirst("button[name=next][value='" + next + "']"), next);
    owner.sends(page, what("step"), "next", next).then().statusCode(303);
  }

  private static String besideMarked(Response refused, String id) {
    Element message = Jsoup.parse(refused.asString()).getElementById(id);
    assertNotNull(message, id);
    return message.text();
  }

  @Test
  void every_bad_line_of_a_file_is_shown_at_once_and_nothing_is_imported() {
    PageReader owner = PageReader.owner();
    boxOf(size());
    String head = "name,line1,town,region,postcode,country,box,count,delivery,sendBy\n";
    String good = "Aunt Ottilie,4 Tarn Lane,Fernby,VT,05999,US,Box %s,1,post,%s\n";
    long before = orders();
    Document page = owner.reads("/gift-orders/import");
    Response refused =
        owner.sendsFile(
            page,
            "form[action='/gift-orders/import']",
            "Hesper " + unique,
            head
                + good.formatted(unique, soon)
                + "Aunt Wilmet,5 Tarn Lane,Fernby,VT,05999,US,Box "
                + unique
                + ",many,post,"
                + soon
                + "\nAunt Enid,6 Tarn Lane,Fernby,VT,05999,US,No such box,1,post,"
                + soon
                + "\n");
    assertEquals(400, refused.statusCode());
    List<String> lines = Jsoup.parse(refused.asString()).select("tbody tr th").eachText();
    assertEquals(List.of("3", "4"), lines);
    assertEquals(before, orders());
    String id =
        id(
            owner.sendsFile(
                page,
                "form[action='/gift-orders/import']",
                "Hesper " + unique,
                head + good.formatted(unique, soon)));
    Owner.reads("/api/gift-orders/" + id).body("recipients.size()", equalTo(1));
  }

  @Test
  void what_is_late_stands_out_and_orders_are_found_by_buyer_and_state() {
    PageReader owner = PageReader.owner();
    boxOf(size());
    String late = LocalDate.now().minusDays(2).toString();
    owner
        .sends(
            owner.reads("/gift-orders/new"),
            NEW,
            "buyer.name",
            "Late Looms " + unique,
            "recipients[0].name",
            "Slow " + unique,
            "recipients[0].box",
            "Box " + unique,
            "recipients[0].delivery",
            "collect",
            "recipients[0].sendBy",
            late)
        .then()
        .statusCode(303);
    Document page = owner.reads("/to-send?sort=leaves");
    Element row = page.selectFirst("tr:contains(Slow " + unique + ")");
    assertTrue(row.selectFirst(".late").text().contains("2 days late"), row.text());
    Document found = owner.reads("/gift-orders?buyer=late+looms+" + unique + "&state=confirmed");
    assertEquals(1, found.select("tbody tr").size());
    assertTrue(
        owner
            .reads("/gift-orders?buyer=" + unique + "&state=sent")
            .text()
            .contains("No order fits"));
  }

  @Test
  void a_bookkeeper_gets_no_form_and_may_send_none() {
    String name = people.with("bookkeeper", "sums and more sums");
    PageReader bookkeeper = PageReader.as(name, "sums and more sums");
    Document page = bookkeeper.reads("/gift-orders/new");
    assertNull(page.selectFirst(NEW));
    assertEquals(403, bookkeeper.posts("/gift-orders/new", Map.of("buyer.name", "x")).statusCode());
  }
}
