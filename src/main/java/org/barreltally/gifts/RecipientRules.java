package org.barreltally.gifts;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barreltally.ledger.Days;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;

/** What recipients must be; what is wrong is noted under each one's path. */
final class RecipientRules {

  /** The most recipients of one order. */
  static final int RECIPIENTS_MAX = 2000;

  static final int CARD_MAX = 600;

  private static final int NAME_MAX = 80;
  private static final int BOXES_MAX = 200;
  private static final int CARD_LINES_MAX = 16;

  private final Faults faults;
  private final GiftBoxes boxes;
  private final List<CarrierTable> carriers;
  private final Days days;
  private final Map<String, Optional<GiftBox>> named = new HashMap<>();
  private String currency;

  /**
   * @param carriers whose tables hold today
   * @param currency of the order; null to take that of the first box
   */
  RecipientRules(
      Faults faults, GiftBoxes boxes, List<CarrierTable> carriers, Days days, String currency) {
    this.faults = faults;
    this.boxes = boxes;
    this.carriers = carriers;
    this.days = days;
    this.currency = currency;
  }

  /** The currency of all boxes read so far; null before the first. */
  String currency() {
    return currency;
  }

  /** The recipient with box, address and days worked out; null where something is wrong. */
  CheckedRecipient read(Recipient said, String path) {
    int before = faults.count();
    if (said == null) {
      faults.require(false, path, "Give name, address, box, count and sendBy.");
      return null;
    }
    faults.text(said.name(), NAME_MAX, false, path + ".name", "Give the recipient's name.");
    GiftBox box = box(said.box(), path + ".box");
    int count = said.count() == null ? 1 : said.count();
    faults.require(
        count >= 1 && count <= BOXES_MAX,
        path + ".count",
        "Give a whole number of boxes from 1 to " + BOXES_MAX + ".");
    card(said.card(), path + ".card");
    faults.text(said.carrier(), Reason.CARRIER_MAX, true, path + ".carrier", "");
    Delivery delivery = said.delivery() == null ? Delivery.POST : said.delivery();
    postage(said.postage(), path + ".postage");
    Address address = address(said.address(), delivery, path + ".address");
    day(said.wantedBy(), path + ".wantedBy");
    day(said.sendBy(), path + ".sendBy");
    int beforeDays = faults.count();
    LatestSend latest = latest(said, delivery, address, path);
    LocalDate sendBy = sendBy(said, delivery, latest, faults.count() > beforeDays, path);
    if (faults.count() > before) {
      return null;
    }
    return new CheckedRecipient(
        said.name().strip(),
        address,
        box,
        count,
        said.card() == null || said.card().isBlank() ? null : said.card().strip(),
        delivery,
        said.postage(),
        said.wantedBy(),
        sendBy,
        latest == null ? null : latest.latestSend(),
        latest == null ? said.carrier() : latest.carrier());
  }

  private GiftBox box(String said, String path) {
    if (said == null || said.isBlank()) {
      faults.require(false, path, "Name the gift box, by its id or its name.");
      return null;
    }
    Optional<GiftBox> box = named.computeIfAbsent(said, boxes::named);
    if (box.isEmpty()) {
      faults.require(false, path, "There is no such gift box. GET /api/gift-boxes lists them.");
      return null;
    }
    String theirs = box.get().price().currency();
    if (currency == null) {
      currency = theirs;
    }
    faults.require(
        currency.equals(theirs),
        path,
        "This box is priced in " + theirs + ", the order in " + currency + ". Order it apart.");
    return box.get();
  }

  private void card(String card, String path) {
    if (card == null) {
      return;
    }
    faults.require(
        card.codePointCount(0, card.length()) <= CARD_MAX,
        path,
        "A card holds at most %d characters; these are %d. Shorten it."
            .formatted(CARD_MAX, card.codePointCount(0, card.length())));
    faults.require(
        card.lines().count() <= CARD_LINES_MAX,
        path,
        "A card holds at most " + CARD_LINES_MAX + " lines.");
  }

  private void postage(Money postage, String path) {
    if (postage != null) {
      faults.require(postage.signum() >= 0, path, "Give a postage of not less than nothing.");
      faults.require(
          currency == null || currency.equals(postage.currency()),
          path,
          "Give it in " + currency + ", as the box is priced.");
    }
  }

  private Address address(Address said, Delivery delivery, String path) {
    if (said == null) {
      faults.require(
          delivery != Delivery.POST,
          path,
          "A parcel needs an address: lines, town, region, postcode, country.");
      return null;
    }
    return new AddressRules(faults).read(said, path);
  }

  private void day(LocalDate day, String path) {
    if (day != null) {
      try {
        days.known(day, path);
      } catch (InvalidField out) {
        faults.require(false, path, out.detail());
      }
    }
  }

  /** By the carrier's table; null where it is not posted, not dated, or no table says. */
  private LatestSend latest(Recipient said, Delivery delivery, Address address, String path) {
    boolean asked = delivery == Delivery.POST && said.wantedBy() != null && address != null;
    if (!asked || said.carrier() == null && carriers.size() != 1) {
      faults.require(
          !asked || said.sendBy() != null || said.carrier() != null,
          path + ".sendBy",
          carriers.isEmpty()
              ? "No carrier's table holds yet. Give sendBy, or tell one with POST /api/carriers."
              : "There is more than one carrier. Name one in carrier, or give sendBy.");
      return null;
    }
    try {
      CarrierTable table = Carriers.named(carriers, said.carrier(), path + ".carrier");
      Optional<LatestSend> latest = Carriers.latestSend(table, said.wantedBy(), address);
      faults.require(
          latest.isPresent() || said.sendBy() != null,
          path + ".sendBy",
          "No zone of " + table.name() + " describes this address. Give sendBy, or add the zone.");
      return latest.orElse(null);
    } catch (Refusal unknown) {
      faults.require(said.carrier() == null, path + ".carrier", unknown.detail());
      return null;
    }
  }

  private LocalDate sendBy(
      Recipient said, Delivery delivery, LatestSend latest, boolean faulty, String path) {
    if (said.sendBy() != null) {
      faults.require(
          said.wantedBy() == null || !said.sendBy().isAfter(said.wantedBy()),
          path + ".sendBy",
          "It is to be there on %s and cannot leave after that.".formatted(said.wantedBy()));
      return said.sendBy();
    }
    if (latest != null) {
      return latest.latestSend();
    }
    faults.require(
        faulty || delivery != Delivery.POST || said.wantedBy() != null,
        path + ".sendBy",
        "Say when it should leave (sendBy) or be there (wantedBy).");
    return said.wantedBy();
  }
}
