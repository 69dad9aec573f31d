package org.barreltally.documents;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.gifts.Address;
import org.barreltally.gifts.Buyer;
import org.barreltally.gifts.Content;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.GiftBox;
import org.barreltally.gifts.GiftJars;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.Jar;
import org.barreltally.gifts.OrderHead;
import org.barreltally.gifts.Payment;
import org.barreltally.gifts.Person;
import org.barreltally.gifts.Promise;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.Stage;
import org.barreltally.gifts.Wrapping;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Money;

/** A gift order of invented people, of any length, as it would be read from the book. */
public final class InventedGifts {

  static final Jar GOLDEN = new Jar("HP", ColorClass.GOLDEN);
  static final Jar AMBER = new Jar("HP", ColorClass.AMBER);
  static final Jar DARK = new Jar("HP", ColorClass.DARK);
  static final Jar PINT = new Jar("PT", ColorClass.AMBER);

  private static final String[] FIRST = {
    "Ottilie", "Wilmet", "Barnaby", "Enoch", "Philippa", "Zoë", "Crispin", "Ænid", "Łucja", "Tobias"
  };
  private static final String[] LAST = {
    "Quillfeather", "Underbough", "Marrowfield-Thistledown", "Pell", "Åkerlund", "Nettlecombe"
  };

  private InventedGifts() {}

  static final GiftBox TASTER =
      box("Taster", "22.00", new Content("HP", ColorClass.GOLDEN, 1, List.of(AMBER)), dark());
  static final GiftBox BREAKFAST =
      box("Breakfast", "28.00", new Content("PT", ColorClass.AMBER, 1, null), dark());

  private static Content dark() {
    return new Content("HP", ColorClass.DARK, 1, null);
  }

  private static GiftBox box(String name, String price, Content... contents) {
    return new GiftBox(
        new UUID(1, name.hashCode()),
        name,
        Money.of(price, "USD"),
        List.of(contents),
        Wrapping.named("Two-jar carton"),
        Wrapping.named("Red ribbon"),
        null,
        null);
  }

  /** An order of so many; picked, or only promised. Every seventh gets amber in golden's stead. */
  public static GiftOrder order(int recipients, boolean picked) {
    List<GiftLine> lines = new ArrayList<>();
    Map<Integer, Person> people = new HashMap<>();
    List<Promise> promises = new ArrayList<>();
    List<GiftJars> jars = new ArrayList<>();
    for (int n = 1; n <= recipients; n++) {
      GiftBox box = n % 3 == 0 ? BREAKFAST : TASTER;
      boolean posted = n % 10 != 0;
      lines.add(
          new GiftLine(
              n,
              box.id(),
              1,
              box.price(),
              posted ? Delivery.POST : Delivery.COLLECT,
              posted ? Money.of("12.50", "USD") : null,
              posted ? "Parcel post" : null,
              LocalDate.of(2026, 12, 24),
              LocalDate.of(2026, 12, 18),
              LocalDate.of(2026, 12, 18),
              picked ? RecipientState.PACKED : RecipientState.CONFIRMED));
      people.put(n, person(n));
      Jar first = n % 3 == 0 ? PINT : GOLDEN;
      Jar given = n % 7 == 0 && n % 3 != 0 ? AMBER : first;
      add(n, first, given, picked, promises, jars);
      add(n, DARK, DARK, picked, promises, jars);
    }
    return new GiftOrder(
        new OrderHead(
            new UUID(2, recipients),
            new UUID(3, 3),
            "USD",
            BigDecimal.valueOf(50),
            1,
            Instant.parse("2026-11-20T12:00:00Z")),
        new Buyer(
            "Hesper Loomworks",
            null,
            null,
            new Address(List.of("1 Shuttle Row"), "Fernby", "VT", "05999", "US"),
            null),
        lines,
        people,
        Map.of(TASTER.id(), TASTER, BREAKFAST.id(), BREAKFAST),
        promises,
        jars,
        List.of(),
        List.of(
            new Payment(
                new UUID(4, 4),
                Payment.Kind.DEPOSIT,
                Money.of("237.75", "USD"),
                LocalDate.of(2026, 11, 20))));
  }

  private static void add(
      int n, Jar wanted, Jar given, boolean picked, List<Promise> promises, List<GiftJars> jars) {
    promises.add(new Promise(n, new UUID(5, 5), given, wanted, 1));
    if (picked) {
      String lot = given.equals(DARK) && n % 2 == 0 ? "P260902-1" : "P260620-" + given.container();
      jars.add(new GiftJars(n, new UUID(6, n), lot, given, wanted, Stage.SHELF, 1));
    }
  }

  private static Person person(int n) {
    String name = FIRST[n % FIRST.length] + " " + LAST[n % LAST.length];
    Address address =
        n % 13 == 0
            ? new Address(List.of("Tarnweg " + n), "Farnheim", null, "12345", "DE")
            : new Address(
                n % 5 == 0
                    ? List.of(n + " Tarn Lane", "Flat 2, the old creamery")
                    : List.of(n + " Tarn Lane"),
                "Fernby",
                "VT",
                "05999",
                "US");
    String card =
        n % 4 == 0
            ? null
            : n % 9 == 0
                ? "Dear "
                    + name
                    + ",\n\n"
                    + "the year was long and the sap ran late, but here is what came of it: a taste"
                    + " of the first run and of the last. Have it on anything that stands"
                    + " still.\n\n"
                    + "With love from all of us at the loom."
                : "Warm greetings from all of us\nat Hesper Loomworks.";
    return new Person(name, address, card);
  }

  static Maker maker() {
    return new Maker(
        "Oxnoddle Hill Sugarhouse",
        List.of("12 Oxnoddle Hill", "Fernby VT 05999"),
        24,
        null,
        null,
        org.barreltally.settings.UnitHabit.US);
  }

  static GiftWords words() {
    return new GiftWords(code -> code.equals("HP") ? "Half-pint jug" : "Pint jug");
  }
}
