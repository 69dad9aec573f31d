package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.gifts.Delivery;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.gifts.rest.OrderView;
import org.barreltally.gifts.rest.OrderView.RecipientView;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What has to leave, of all gift orders, the most pressing first. */
@Path("/to-send")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ToSendPage implements MenuEntry {

  /**
   * A recipient whose boxes are to leave.
   *
   * @param leaves the last day for it; null where none was said
   * @param days until then; below zero it is late
   */
  public record ToSend(
      UUID order, String buyer, RecipientView recipient, String town, LocalDate leaves, long days) {

    public long daysLate() {
      return -days;
    }

    public boolean late() {
      return days < 0;
    }

    public boolean today() {
      return leaves != null && days == 0;
    }
  }

  private static final List<Column<ToSend>> COLUMNS =
      List.of(
          Column.by("leaves", ToSend::leaves),
          Column.by("buyer", ToSend::buyer),
          Column.by("name", row -> row.recipient().name()),
          Column.by("state", row -> row.recipient().state()));

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance toSend(
        Listing<ToSend> list, long late, Form asked, List<Choice> deliveries);
  }

  private final GiftOrdersApi orders;
  private final PageFarm farm;

  @Inject
  ToSendPage(GiftOrdersApi orders, PageFarm farm) {
    this.orders = orders;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@QueryParam("delivery") String delivery, @Context UriInfo uri) {
    Form asked = Form.with("delivery", delivery);
    List<ToSend> waiting =
        WholeList.of(orders::list).stream()
            .flatMap(
                order ->
                    order.recipients().stream()
                        .filter(OrderRow::waits)
                        .map(recipient -> row(order, recipient)))
            .filter(
                row ->
                    asked.value("delivery").isEmpty()
                        || row.recipient().delivery().code().equals(asked.value("delivery")))
            .sorted(COLUMNS.get(0).order())
            .toList();
    return Templates.toSend(
        Listing.of(waiting, COLUMNS, uri),
        waiting.stream().filter(ToSend::late).count(),
        asked,
        Choice.of(Delivery.values(), "gifts.delivery"));
  }

  private ToSend row(OrderView order, RecipientView recipient) {
    LocalDate leaves = OrderRow.leaves(recipient);
    return new ToSend(
        order.id(),
        order.buyer() == null ? null : order.buyer().name(),
        recipient,
        recipient.address() == null ? null : recipient.address().town(),
        leaves,
        leaves == null ? 0 : java.time.temporal.ChronoUnit.DAYS.between(farm.today(), leaves));
  }

  @Override
  public String path() {
    return "/to-send";
  }

  @Override
  public String words() {
    return "gifts.to-send";
  }

  @Override
  public Part part() {
    return Part.TODAY;
  }

  @Override
  public int order() {
    return 40;
  }
}
