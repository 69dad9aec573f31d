package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
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
import java.util.UUID;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.gifts.rest.OrderStepsApi;
import org.barreltally.gifts.rest.OrderView;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Recipients are added to an order. */
@Path("/gift-orders/{id}/recipients")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class AddRecipientsPage {

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance addRecipients(
        OrderView order, Form form, RecipientRows.Offer offer, int rows);
  }

  private final GiftOrdersApi orders;
  private final OrderStepsApi steps;
  private final RecipientRows recipients;
  private final Forms forms;

  @Inject
  AddRecipientsPage(
      GiftOrdersApi orders, OrderStepsApi steps, RecipientRows recipients, Forms forms) {
    this.orders = orders;
    this.steps = steps;
    this.recipients = recipients;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(@PathParam("id") UUID id) {
    return shown(id, Form.blank(), RecipientRows.ROWS);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response added(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    if (said.containsKey("more")) {
      Form form = forms.form(said);
      int rows = form.rows("recipients", 0).size() + RecipientRows.ROWS;
      return Response.ok(shown(id, form, rows)).build();
    }
    RecipientRows.addCountry(said);
    return forms.take(
        said,
        OrderStepsApi.More.class,
        (key, more) -> {
          steps.add(id, key, null, more);
          return URI.create("/gift-orders/" + id);
        },
        form -> shown(id, form, 1));
  }

  private TemplateInstance shown(UUID id, Form form, int rows) {
    OrderView order = (OrderView) orders.one(id).getEntity();
    return Templates.addRecipients(order, form, recipients.offer(), rows);
  }
}
