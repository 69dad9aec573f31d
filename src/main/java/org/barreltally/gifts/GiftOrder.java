package org.barreltally.gifts;

import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A gift order as it stands.
 *
 * @param buyer whose fields are null once they were removed
 * @param lines its recipients by number
 * @param people by number; nobody is missing, but what is in one may be removed
 * @param boxes those its lines name and perhaps others, by id
 * @param promises open, by recipient
 * @param jars in the recipients' boxes, by lot
 * @param done every step in order
 */
public record GiftOrder(
    OrderHead head,
    Buyer buyer,
    List<GiftLine> lines,
    Map<Integer, Person> people,
    Map<UUID, GiftBox> boxes,
    List<Promise> promises,
    List<GiftJars> jars,
    List<Done> done,
    List<Payment> payments) {

  public GiftOrder {
    lines = List.copyOf(lines);
    promises = List.copyOf(promises);
    jars = List.copyOf(jars);
    done = List.copyOf(done);
    payments = List.copyOf(payments);
  }

  /**
   * @throws UnknownRecipient if there is none of that number
   */
  public GiftLine line(int n) {
    return lines.stream()
        .filter(line -> line.n() == n)
        .findFirst()
        .orElseThrow(() -> new UnknownRecipient(n, lines.size()));
  }

  public GiftBox box(GiftLine line) {
    return boxes.get(line.box());
  }

  public Person person(int n) {
    return people.getOrDefault(n, Person.FORGOTTEN);
  }

  public List<Promise> promises(int n) {
    return promises.stream().filter(p -> p.n() == n).toList();
  }

  public List<GiftJars> jars(int n) {
    return jars.stream().filter(j -> j.n() == n).toList();
  }

  public List<GiftJars> jars(int n, Stage stage) {
    return jars.stream().filter(j -> j.n() == n && j.stage() == stage).toList();
  }

  /** Whether the jars of everyone who still waits for them are reserved. */
  public boolean reserved() {
    return lines.stream()
        .filter(line -> line.state() == RecipientState.CONFIRMED)
        .allMatch(line -> !promises(line.n()).isEmpty());
  }

  /** Whether every recipient has got the boxes or was taken out. */
  public boolean resolved() {
    return lines.stream().allMatch(line -> line.state().resolved());
  }
}
