package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.Payer;
import org.barreltally.gifts.Person;
import org.barreltally.gifts.Picking;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.Replacing;
import org.barreltally.gifts.Sending;
import org.barreltally.gifts.Stage;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.gifts.rest.OrderView;
import org.barreltally.gifts.rest.OrderView.RecipientView;
import org.barreltally.gifts.rest.RecipientApi;
import org.barreltally.gifts.rest.RecipientTroubleApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.JarRow;
import org.barreltally.web.pages.SeveralForms;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One recipient of a gift order: what is in the boxes, and every step of their way. */
@Path("/gift-orders/{id}/recipients/{n}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class RecipientPage {

  /**
   * What the page offers; whether it may be done the book decides.
   *
   * @param jars in the boxes by lot, in the rows of the form that asks for them
   */
  public record Offer(
      boolean pick,
      boolean pack,
      boolean send,
      boolean deliver,
      boolean takeBack,
      boolean inspect,
      boolean replace,
      boolean cancel,
      boolean undo,
      List<JarRow> inspectRows,
      List<JarRow> replaceRows) {}

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance recipient(
        OrderView order,
        RecipientView recipient,
        Offer offer,
        SeveralForms forms,
        List<Choice> payers,
        List<Choice> keep);
  }

  private final GiftOrdersApi orders;
  private final RecipientApi steps;
  private final RecipientTroubleApi trouble;
  private final Forms forms;

  @Inject
  RecipientPage(
      GiftOrdersApi orders, RecipientApi steps, RecipientTroubleApi trouble, Forms forms) {
    this.orders = orders;
    this.steps = steps;
    this.trouble = trouble;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id, @PathParam("n") int n) {
    return shown(id, n, SeveralForms.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response act(
      @PathParam("id") UUID id, @PathParam("n") int n, MultivaluedMap<String, String> said) {
    String what = String.valueOf(said.getFirst(SeveralForms.FIELD));
    Taking on = new Taking(id, n, what, said);
    return switch (what) {
      case "pick" -> take(on, Picking.How.class, (key, how) -> steps.pick(id, n, key, null, how));
      case "pack" ->
          take(on, RecipientApi.On.class, (key, day) -> steps.pack(id, n, key, null, day));
      case "send" -> take(on, Sending.How.class, (key, how) -> steps.send(id, n, key, null, how));
      case "deliver" ->
          take(on, RecipientApi.On.class, (key, day) -> steps.deliver(id, n, key, null, day));
      case "cancel" ->
          take(on, RecipientApi.Why.class, (key, why) -> steps.cancel(id, n, key, null, why));
      case "undo" ->
          take(on, RecipientApi.Why.class, (key, why) -> steps.undo(id, n, key, null, why));
      case "return" ->
          take(
              on,
              RecipientTroubleApi.CameBack.class,
              (key, back) -> trouble.takeBack(id, n, key, null, back));
      case "inspect" ->
          take(
              on,
              RecipientTroubleApi.LookedAt.class,
              (key, found) -> trouble.inspect(id, n, key, null, found));
      case "replace" ->
          take(
              on.with(JarRow.filled(said, "lines", "count")),
              Replacing.What.class,
              (key, broken) -> trouble.replace(id, n, key, null, broken));
      case "correct" ->
          take(
              on,
              Correction.class,
              (key, right) -> trouble.correct(id, n, key, null, right.recipient()));
      default -> throw new BadRequestException();
    };
  }

  /** Under the name that refusals give it. */
  public record Correction(Person recipient) {}

  private record Taking(UUID id, int n, String what, MultivaluedMap<String, String> said) {

    Taking with(MultivaluedMap<String, String> filled) {
      return new Taking(id, n, what, filled);
    }
  }

  private interface Act<T> {
    void does(String key, T said);
  }

  private <T> Response take(Taking on, Class<T> record, Act<T> act) {
    return forms.take(
        on.said(),
        record,
        (key, read) -> {
          act.does(key, read);
          return URI.create("/gift-orders/" + on.id() + "/recipients/" + on.n());
        },
        form -> shown(on.id(), on.n(), SeveralForms.with(on.what(), form)));
  }

  private TemplateInstance shown(UUID id, int n, SeveralForms several) {
    OrderView order = (OrderView) orders.one(id).getEntity();
    RecipientView recipient =
        order.recipients().stream()
            .filter(one -> one.n() == n)
            .findFirst()
            .orElseThrow(NotFoundException::new);
    return Templates.recipient(
        order,
        recipient,
        offer(recipient, several),
        several.beginning("correct", correction(recipient)),
        Choice.of(Payer.values(), "gifts.payer"),
        List.of(
            new Choice("true", Words.of("gifts.keep.true")),
            new Choice("false", Words.of("gifts.keep.false"))));
  }

  private static Form correction(RecipientView recipient) {
    List<Object> known = new ArrayList<>();
    put(known, "recipient.name", recipient.name());
    put(known, "recipient.card", recipient.card());
    if (recipient.address() != null) {
      for (int line = 0; line < recipient.address().lines().size(); line++) {
        put(known, "recipient.address.lines[" + line + "]", recipient.address().lines().get(line));
      }
      put(known, "recipient.address.town", recipient.address().town());
      put(known, "recipient.address.region", recipient.address().region());
      put(known, "recipient.address.postcode", recipient.address().postcode());
      put(known, "recipient.address.country", recipient.address().country());
    }
    return Form.with(known.toArray());
  }

  private static void put(List<Object> known, String field, String text) {
    if (text != null) {
      known.add(field);
      known.add(text);
    }
  }

  private static Offer offer(RecipientView recipient, SeveralForms several) {
    boolean back = false;
    boolean again = false;
    boolean gone = false;
    boolean home = false;
    switch (recipient.state()) {
      case SENT, DELIVERED -> gone = true;
      case RETURNED -> {
        back = recipient.awaitingInspection();
        again = !back;
      }
      case CANCELLED -> {}
      default -> home = true;
    }
    boolean picked = home && !recipient.lots().isEmpty();
    boolean packed = recipient.state() == RecipientState.PACKED;
    return new Offer(
        home && !picked || again,
        picked && !packed,
        packed || again,
        packed || recipient.state() == RecipientState.SENT,
        gone,
        back,
        picked || gone,
        home || again,
        recipient.steps() != null && !recipient.steps().isEmpty(),
        back ? rows(recipient, several.at("inspect"), Stage.BACK) : List.of(),
        rows(recipient, several.at("replace"), gone ? Stage.SENT : Stage.SHELF));
  }

  private static List<JarRow> rows(RecipientView recipient, Form form, Stage stage) {
    return JarRow.in(
        form,
        "lines",
        recipient.lots().stream()
            .filter(lot -> lot.at() == stage)
            .map(lot -> JarRow.of(lot.container(), lot.grade(), lot.lot(), lot.count(), false))
            .toList());
  }
}
