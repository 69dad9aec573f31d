package org.barreltally.gifts.rest;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.Address;
import org.barreltally.gifts.Buyer;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.Done;
import org.barreltally.gifts.GiftBill;
import org.barreltally.gifts.GiftLine;
import org.barreltally.gifts.GiftOrder;
import org.barreltally.gifts.GiftOutcome;
import org.barreltally.gifts.Jar;
import org.barreltally.gifts.Payer;
import org.barreltally.gifts.Payment;
import org.barreltally.gifts.Person;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.Stage;
import org.barreltally.gifts.Step;
import org.barreltally.pricing.Money;

/**
 * A gift order as it is read.
 *
 * @param buyer null where people are left out
 * @param reserved whether the jars of everyone who waits for them are reserved
 * @param resolved whether every recipient has got the boxes or was taken out
 * @param total what the buyer owes in all; balance is what of it is still to be paid
 */
public record OrderView(
    UUID id,
    long version,
    String currency,
    Buyer buyer,
    Instant recordedAt,
    boolean reserved,
    boolean resolved,
    List<RecipientView> recipients,
    Money total,
    Money deposit,
    Money balance,
    GiftBill bill,
    List<Payment> payments,
    List<String> cautions) {

  /**
   * One recipient.
   *
   * @param contents what is reserved or in the boxes
   * @param lots which jars are in the boxes
   * @param steps left out where many recipients are answered at once
   */
  public record RecipientView(
      int n,
      String name,
      Address address,
      UUID box,
      String boxName,
      int count,
      Money price,
      String card,
      Delivery delivery,
      Money postage,
      String carrier,
      LocalDate wantedBy,
      LocalDate sendBy,
      LocalDate latestSend,
      RecipientState state,
      boolean reserved,
      boolean awaitingInspection,
      List<ContentView> contents,
      List<LotView> lots,
      List<StepView> steps) {}

  /** Jars of one size and grade; {@code insteadOf} where it is a substitute. */
  public record ContentView(String container, String grade, long count, Jar insteadOf) {}

  /** Jars of one lot and where they are. */
  public record LotView(String container, String grade, String lot, long count, Stage at) {}

  /** A step of the recipient's; {@code undoes} names the one it takes back. */
  public record StepView(
      UUID id,
      Step step,
      RecipientState becomes,
      LocalDate on,
      UUID movement,
      UUID undoes,
      Money postage,
      Payer paidBy,
      String carrier,
      String reason) {}

  /** With names, addresses and card texts. */
  static OrderView of(GiftOrder order) {
    return of(order, true);
  }

  /** Without steps and anything that says who people are, for answers that are kept. */
  static OrderView withoutPeople(GiftOrder order) {
    return of(order, false);
  }

  private static OrderView of(GiftOrder order, boolean people) {
    GiftBill bill = GiftBill.of(order);
    return new OrderView(
        order.head().id(),
        order.head().version(),
        order.head().currency(),
        people ? order.buyer() : null,
        order.head().recordedAt(),
        order.reserved(),
        order.resolved(),
        order.lines().stream().map(line -> recipient(order, line, people, people)).toList(),
        bill.total(),
        bill.deposit(),
        bill.balance(),
        bill,
        order.payments(),
        GiftOutcome.cautions(order));
  }

  /** One recipient with every step, without anything that says who it is. */
  static RecipientView recipient(GiftOrder order, int n) {
    return recipient(order, order.line(n), false, true);
  }

  private static RecipientView recipient(
      GiftOrder order, GiftLine line, boolean people, boolean steps) {
    Person person = people ? order.person(line.n()) : Person.FORGOTTEN;
    return new RecipientView(
        line.n(),
        person.name(),
        person.address(),
        line.box(),
        order.box(line).name(),
        line.count(),
        line.price(),
        person.card(),
        line.delivery(),
        line.postage(),
        line.carrier(),
        line.wantedBy(),
        line.sendBy(),
        line.latestSend(),
        line.state(),
        !order.promises(line.n()).isEmpty(),
        !order.jars(line.n(), Stage.BACK).isEmpty(),
        GiftOutcome.contents(order, line).stream()
            .map(
                content ->
                    new ContentView(
                        content.jar().container(),
                        content.jar().grade().code(),
                        content.pieces(),
                        content.substitute() ? content.wanted() : null))
            .toList(),
        order.jars(line.n()).stream()
            .map(
                jars ->
                    new LotView(
                        jars.jar().container(),
                        jars.jar().grade().code(),
                        jars.lot(),
                        jars.pieces(),
                        jars.stage()))
            .toList(),
        steps
            ? order.done().stream()
                .filter(done -> done.n() != null && done.n() == line.n())
                .map(OrderView::step)
                .toList()
            : null);
  }

  private static StepView step(Done done) {
    return new StepView(
        done.id(),
        done.step(),
        done.becomes(),
        done.on(),
        done.movement(),
        done.undoes(),
        done.postage(),
        done.paidBy(),
        done.carrier(),
        done.reason());
  }
}
