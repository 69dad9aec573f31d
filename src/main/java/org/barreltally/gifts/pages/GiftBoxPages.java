package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.barreltally.gifts.CarrierTable;
import org.barreltally.gifts.GiftBox;
import org.barreltally.gifts.rest.CarriersApi;
import org.barreltally.gifts.rest.GiftBoxesApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The gift boxes, and the carriers' zones and days. */
@Path("/gift-boxes")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class GiftBoxPages implements MenuEntry {

  private static final List<Column<GiftBox>> COLUMNS =
      List.of(
          Column.by("name", GiftBox::name),
          Column.by("jars", GiftBox::jars),
          Column.by("price", box -> box.price().amount()));

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance boxes(Listing<GiftBox> list, List<CarrierTable> carriers);
  }

  private final GiftBoxesApi boxes;
  private final CarriersApi carriers;

  @Inject
  GiftBoxPages(GiftBoxesApi boxes, CarriersApi carriers) {
    this.boxes = boxes;
    this.carriers = carriers;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    return Templates.boxes(
        Listing.of(WholeList.of(boxes::list), COLUMNS, uri), carriers.list(null).items());
  }

  @Override
  public String path() {
    return "/gift-boxes";
  }

  @Override
  public String words() {
    return "gifts.boxes";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 50;
  }
}
