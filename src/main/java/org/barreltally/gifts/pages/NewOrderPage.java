package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.barreltally.gifts.OrderGifts;
import org.barreltally.gifts.Outlook;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A gift order is taken; before that, whether it can be promised. */
@Path("/gift-orders/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewOrderPage {

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance newOrder(
        Form form, RecipientRows.Offer offer, int rows, Outlook outlook);
  }

  private final GiftOrdersApi orders;
  private final RecipientRows recipients;
  private final Forms forms;

  @Inject
  NewOrderPage(GiftOrdersApi orders, RecipientRows recipients, Forms forms) {
    this.orders = orders;
    this.recipients = recipients;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return shown(Form.blank(), RecipientRows.ROWS, null);
  }

  /** Takes the order, shows more rows, or shows what there will be, as the button says. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response taken(MultivaluedMap<String, String> said) {
    if (said.containsKey("more")) {
      Form form = forms.form(said);
      int rows = form.rows("recipients", 0).size() + RecipientRows.ROWS;
      return Response.ok(shown(form, rows, null)).build();
    }
    RecipientRows.addCountry(said);
    if (said.containsKey("outlook")) {
      return foreseen(said);
    }
    return forms.take(
        said,
        OrderGifts.class,
        (key, order) -> {
          Response taken = orders.take(key, order);
          return URI.create("/gift-orders/" + ReadAnew.identity(taken.getLocation()));
        },
        form -> shown(form, 1, null));
  }

  private Response foreseen(MultivaluedMap<String, String> said) {
    try {
      Outlook outlook = orders.whatIf(said.getFirst("planned"), forms.peek(said, OrderGifts.class));
      return Response.ok(shown(forms.form(said), 1, outlook)).build();
    } catch (RuntimeException refusal) {
      Form form = forms.refused(said, refusal);
      return Response.status(form.refusal().status()).entity(shown(form, 1, null)).build();
    }
  }

  private TemplateInstance shown(Form form, int rows, Outlook outlook) {
    return Templates.newOrder(form, recipients.offer(), rows, outlook);
  }
}
