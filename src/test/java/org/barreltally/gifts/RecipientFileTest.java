package org.barreltally.gifts;

import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.UUID;
import org.barreltally.BookRows;
import org.barreltally.Owner;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Files of recipients: RFC 4180 with its liberties, and nothing taken until a file is clean. */
@QuarkusTest
class RecipientFileTest {

  private static final String HEADER =
      "name,line1,line2,town,region,postcode,country,box,count,card,delivery,postage,sendBy\n";
  private static final Charset WINDOWS = Charset.forName("windows-1252");

  @Inject BookRows rows;

  private String box;

  @BeforeEach
  void aBox() {
    box = "Filed " + Owner.newTag("");
    GiftShelf.box(box, "22.00", "HP golden 1");
  }

  private String lines() {
    return """
    Zoë Quillfeather,4 Tarn Lane,,Fernby,VT,05999,US,%1$s,2,"Warm greetings,
    from all of us",post,12.50,2026-12-14
    "Quillfeather, Wilmet",5 Tarn Lane,Flat 2,Fernby,VT,05999,US,%1$s,1,,post,12.50,2026-12-14
    Barnaby Quillfeather,,,,,,,%1$s,1,,collect,,2026-12-19
    """
        .formatted(box);
  }

  private static ValidatableResponse sends(byte[] file) {
    return Owner.asks()
        .contentType("text/csv")
        .header("Idempotency-Key", UUID.randomUUID())
        .queryParam("buyer", "Hesper Loomworks")
        .body(file)
        .post("/api/gift-orders/from-file")
        .then();
  }

  private void takes(byte[] file) {
    String id =
        sends(file)
            .statusCode(201)
            .body("recipients", hasSize(3))
            .body("total.amount.toDouble()", equalTo(113.00))
            .extract()
            .path("id");
    Owner.reads("/api/gift-orders/" + id)
        .body("recipients[0].name", equalTo("Zoë Quillfeather"))
        .body("recipients[0].card", containsString("Warm greetings"))
        .body("recipients[1].name", equalTo("Quillfeather, Wilmet"))
        .body("recipients[1].address.lines", hasSize(2))
        .body("recipients[2].delivery", equalTo("collect"));
  }

  @Test
  void with_a_header_and_commas_in_utf_8() {
    takes((HEADER + lines()).getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void without_a_header() {
    takes(lines().getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void with_a_byte_order_mark_and_carriage_returns() {
    takes(("\uFEFF" + HEADER + lines()).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void with_semicolons_in_windows_1252_as_spreadsheets_save_it() {
    String semicolons =
        (HEADER + lines())
            .replace("Quillfeather, Wilmet", "Quillfeather# Wilmet")
            .replace("greetings,", "greetings#")
            .replace(',', ';')
            .replace('#', ',');
    takes(semicolons.replace("12.50", "12,50").getBytes(WINDOWS));
  }

  @Test
  void with_its_columns_in_another_order() {
    String file = "Box;NAME;send by;delivery\n%s;Ottilie;2026-12-19;collect\n".formatted(box);
    sends(file.getBytes(StandardCharsets.UTF_8)).statusCode(201).body("recipients", hasSize(1));
  }

  @Test
  void every_bad_line_is_named_at_once_and_nothing_is_taken() {
    String file =
        HEADER
            + """
            ,4 Tarn Lane,,Fernby,VT,05999,US,%1$s,2,,post,12.50,2026-12-14
            Ottilie,4 Tarn Lane,,Fernby,VT,05999,US,%1$s,1,,post,12.50,2026-12-14
            Wilmet,,,,,,,%1$s,1,,post,12.50,2026-12-14
            Barnaby,5 Tarn Lane,,Fernby,VT,0599,US,No box,x,,balloon,cheap,2026-02-30
            Enoch,5 Tarn Lane,,Fernby,VT,05999,US,%1$s,1,,post,12.50,2026-12-14,too,many
            """
                .formatted(box);
    Map<String, String> before = rows.fingerprint();
    sends(file.getBytes(StandardCharsets.UTF_8))
        .statusCode(400)
        .body(
            "errors.field",
            containsInAnyOrder(
                "line 2, column name",
                "line 4, column line1",
                "line 5, column postcode",
                "line 5, column box",
                "line 5, column count",
                "line 5, column delivery",
                "line 5, column postage",
                "line 5, column sendBy",
                "line 6"));
    assertEquals(before, rows.fingerprint());
  }

  @Test
  void what_is_no_such_file_is_refused() {
    for (String file :
        new String[] {
          "",
          "\n\n",
          HEADER,
          "name,town,box,colour\nO,F,B,red\n",
          "name,name,box,town\nO,P,B,F\n",
          "\"a"
        }) {
      sends(file.getBytes(StandardCharsets.UTF_8))
          .statusCode(400)
          .body("code", equalTo("broken-csv"));
    }
    sends(new byte[] {'a', (byte) 0x81, ',', 'b'})
        .statusCode(400)
        .body("code", equalTo("broken-csv"));
    sends(("x,y\n".repeat(2500)).getBytes(StandardCharsets.UTF_8))
        .statusCode(400)
        .body("detail", containsString("more than 2000"));
  }
}
