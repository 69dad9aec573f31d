package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.barreltally.gifts.Outlook;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.gifts.rest.OrderView;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What of an order is not reserved yet, and what there will be by its days. */
@Path("/gift-orders/{id}/availability")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class OutlookPage {

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance availability(OrderView order, Outlook outlook, boolean planned);
  }

  private final GiftOrdersApi orders;

  @Inject
  OutlookPage(GiftOrdersApi orders) {
    this.orders = orders;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id, @QueryParam("planned") String planned) {
    Outlook outlook = orders.outlook(id, planned);
    return Templates.availability(
        (OrderView) orders.one(id).getEntity(), outlook, "true".equals(planned));
  }
}
