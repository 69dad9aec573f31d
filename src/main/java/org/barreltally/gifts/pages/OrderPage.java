package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.Payer;
import org.barreltally.gifts.RecipientState;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.gifts.rest.OrderStepsApi;
import org.barreltally.gifts.rest.OrderView;
import org.barreltally.gifts.rest.OrderView.RecipientView;
import org.barreltally.gifts.rest.RecipientApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.SeveralForms;
import org.barreltally.web.pages.SheetChoices;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One gift order: its recipients by state with the next step of each, its papers and its money. */
@Path("/gift-orders/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class OrderPage {

  /** The recipients at a state. */
  public record AtState(RecipientState state, List<Row> recipients) {}

  /**
   * A recipient with what usually comes next.
   *
   * @param next code of a step that needs nothing said; null where there is none
   * @param leaves the last day to send it; null where none was said
   */
  public record Row(RecipientView recipient, String next, LocalDate leaves, boolean late) {

    /** Where a refusal names the jars of this recipient; recipients count from 1, rows from 0. */
    public String boxField() {
      return "recipients[" + (recipient.n() - 1) + "].box";
    }
  }

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance order(
        OrderView order,
        List<AtState> states,
        SeveralForms forms,
        List<Choice> sheets,
        List<Choice> payers);

    static native TemplateInstance forget(OrderView order, Form form);
  }

  private final GiftOrdersApi orders;
  private final OrderStepsApi steps;
  private final RecipientApi recipients;
  private final Forms forms;
  private final SheetChoices sheets;
  private final PageFarm farm;

  @Inject
  OrderPage(
      GiftOrdersApi orders,
      OrderStepsApi steps,
      RecipientApi recipients,
      Forms forms,
      SheetChoices sheets,
      PageFarm farm) {
    this.orders = orders;
    this.steps = steps;
    this.recipients = recipients;
    this.forms = forms;
    this.sheets = sheets;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return shown(id, SeveralForms.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response act(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    String what = said.getFirst(SeveralForms.FIELD);
    return switch (what == null ? "" : what) {
      case "step" -> one(id, said);
      case "pay" ->
          take(
              id,
              what,
              said,
              OrderStepsApi.Paid.class,
              (key, paid) -> steps.pay(id, key, null, paid));
      case "reserve" ->
          take(
              id,
              what,
              said,
              OrderStepsApi.Nothing.class,
              (key, n) -> steps.reserve(id, key, null, n));
      case "release" ->
          take(
              id,
              what,
              said,
              OrderStepsApi.Nothing.class,
              (key, n) -> steps.release(id, key, null, n));
      case "pick" ->
          take(id, what, said, OrderStepsApi.Many.class, (key, m) -> steps.pick(id, key, null, m));
      case "pack" ->
          take(id, what, said, OrderStepsApi.Many.class, (key, m) -> steps.pack(id, key, null, m));
      case "send" ->
          take(id, what, said, OrderStepsApi.Many.class, (key, m) -> steps.send(id, key, null, m));
      default -> throw new BadRequestException();
    };
  }

  private interface Act<T> {
    void does(String key, T said);
  }

  private <T> Response take(
      UUID id, String what, MultivaluedMap<String, String> said, Class<T> record, Act<T> act) {
    return forms.take(
        said,
        record,
        (key, read) -> {
          act.does(key, read);
          return URI.create("/gift-orders/" + id);
        },
        form -> shown(id, SeveralForms.with(what, form)));
  }

  /** The next step of the recipient whose button was pressed: {@code pick 3}. */
  private Response one(UUID id, MultivaluedMap<String, String> said) {
    String[] asked = String.valueOf(said.getFirst("next")).split(" ");
    if (asked.length != 2 || !asked[1].matches("[0-9]{1,4}")) {
      throw new BadRequestException();
    }
    int n = Integer.parseInt(asked[1]);
    return take(
        id,
        "step",
        said,
        OrderStepsApi.Nothing.class,
        (key, nothing) -> {
          switch (asked[0]) {
            case "pick" -> recipients.pick(id, n, key, null, null);
            case "pack" -> recipients.pack(id, n, key, null, null);
            case "send" -> recipients.send(id, n, key, null, null);
            case "deliver" -> recipients.deliver(id, n, key, null, null);
            default -> throw new BadRequestException();
          }
        });
  }

  @GET
  @Path("/forget")
  @Operation(hidden = true)
  public TemplateInstance askForget(@PathParam("id") UUID id) {
    return Templates.forget(at(id), Form.blank());
  }

  /** Removes the people's data. */
  @POST
  @Path("/forget")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response forget(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        OrderStepsApi.Nothing.class,
        (key, nothing) -> {
          orders.forget(id);
          return URI.create("/gift-orders/" + id);
        },
        form -> Templates.forget(at(id), form));
  }

  private OrderView at(UUID id) {
    return (OrderView) orders.one(id).getEntity();
  }

  private TemplateInstance shown(UUID id, SeveralForms several) {
    OrderView order = at(id);
    List<AtState> states =
        OrderRow.counts(order).stream()
            .map(
                count ->
                    new AtState(
                        count.state(),
                        order.recipients().stream()
                            .filter(recipient -> recipient.state() == count.state())
                            .map(this::row)
                            .toList()))
            .toList();
    return Templates.order(
        order, states, several, sheets.choices(), Choice.of(Payer.values(), "gifts.payer"));
  }

  private Row row(RecipientView recipient) {
    LocalDate leaves = OrderRow.leaves(recipient);
    boolean late = OrderRow.waits(recipient) && leaves != null && leaves.isBefore(farm.today());
    return new Row(recipient, next(recipient), leaves, late);
  }

  /** What a button offers beside a recipient; whether it may be done the book decides. */
  private static String next(RecipientView recipient) {
    return switch (recipient.state()) {
      case CONFIRMED -> recipient.reserved() ? "pick" : null;
      case PICKED -> "pack";
      case PACKED -> recipient.delivery() == Delivery.POST ? "send" : "deliver";
      case SENT -> "deliver";
      default -> null;
    };
  }
}
