package org.barreltally.gifts;

import static org.barreltally.Owner.posts;
import static org.barreltally.Owner.reads;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.quarkus.test.junit.QuarkusTest;
import org.barreltally.Owner;
import org.junit.jupiter.api.Test;

/** The owner tells a carrier's zones; orders work their latest day back from them. */
@QuarkusTest
class CarriersOverRestTest {

  @Test
  void the_latest_day_is_worked_back_from_the_day_it_is_wanted() {
    String carrier = Owner.newTag("Post ");
    posts(
            "/api/carriers",
            """
            {'name': '%s', 'validFrom': '2026-11-01', 'closed': ['2026-12-25'],
             'zones': [{'name': 'near', 'days': 2, 'countries': ['US'], 'postcodes': ['05']},
                       {'name': 'far', 'days': 5, 'countries': ['US']}]}
            """
                .formatted(carrier))
        .statusCode(201);
    Owner.asks()
        .queryParam("carrier", carrier)
        .get("/api/carriers/latest-send?wantedBy=2026-12-25&country=US&postcode=05999")
        .then()
        .statusCode(200)
        .body("zone", equalTo("near"))
        .body("latestSend", equalTo("2026-12-22"));

    String box = GiftShelf.box(Owner.newTag("Box "), "22.00", "HP golden 1");
    String recipient =
        "{'name': 'Ottilie', 'box': '%s', 'carrier': '%s', 'wantedBy': '2026-12-24', %s"
            + " 'address': {'lines': ['4 Tarn Lane'], 'town': 'Fernby', 'region': 'VT',"
            + " 'postcode': '05999', 'country': 'US'}}";
    String order =
        GiftShelf.order(
            recipient.formatted(box, carrier, ""),
            recipient.formatted(box, carrier, "'sendBy': '2026-12-23',"));
    reads("/api/gift-orders/" + order)
        .body("recipients[0].sendBy", equalTo("2026-12-22"))
        .body("recipients[0].latestSend", equalTo("2026-12-22"))
        .body("recipients[1].sendBy", equalTo("2026-12-23"))
        .body("cautions", hasItem(containsString("Recipient 2 is to be sent by 2026-12-23")));

    posts(
            "/api/gift-orders",
            "{'buyer': {'name': 'H'}, 'recipients': [%s]}"
                .formatted(
                    recipient
                        .formatted(box, carrier, "")
                        .replace("'US'", "'CA'")
                        .replace("05999", "K1A 0B1")))
        .statusCode(400)
        .body("errors[0].field", equalTo("recipients[0].sendBy"))
        .body("errors[0].message", containsString("No zone"));
    reads("/api/carriers?on=2026-10-01")
        .body("items.name.contains('" + carrier + "')", equalTo(false));
  }

  @Test
  void a_packed_weight_is_an_estimate_until_a_box_was_weighed() {
    String box = GiftShelf.box(Owner.newTag("Weighed "), "22.00", "HP golden 1", "HP dark 1");
    reads("/api/gift-boxes/" + box).body("packedWeight.basis", equalTo("estimated"));
    posts("/api/gift-boxes/" + box + "/weighings", "{'weight': {'value': 1.9, 'unit': 'lb'}}")
        .statusCode(201)
        .body("packedWeight.basis", equalTo("weighed"))
        .body("packedWeight.weighings", equalTo(1))
        .body("packedWeight.weight.value.toDouble()", equalTo(1.9));
    posts("/api/gift-boxes/" + box + "/weighings", "{'weight': {'value': 1.9, 'unit': 'gal'}}")
        .statusCode(400)
        .body("errors.field", hasItem("weight"));
  }
}
