package org.barreltally.shops.pages;

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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.List;
import java.util.Map;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.shops.CountShop;
import org.barreltally.shops.MoveJars;
import org.barreltally.shops.Shop;
import org.barreltally.shops.rest.ShopShelfApi;
import org.barreltally.shops.rest.ShopsApi;
import org.barreltally.stock.pages.RoomJars;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.JarRow;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are brought to a shop, fetched home, or counted on its shelf. */
@Path("/shops/{code}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ShelfPage {

  @CheckedTemplate(basePath = "shops")
  static class Templates {
    static native TemplateInstance move(
        Shop shop, boolean fetch, Form form, List<JarRow> jars, String room, List<Choice> rooms);

    static native TemplateInstance count(
        Shop shop, Form form, List<JarRow> jars, boolean bySize, int more);
  }

  private final ShopsApi shops;
  private final ShopShelfApi shelves;
  private final RoomJars jars;
  private final Forms forms;

  @Inject
  ShelfPage(ShopsApi shops, ShopShelfApi shelves, RoomJars jars, Forms forms) {
    this.shops = shops;
    this.shelves = shelves;
    this.jars = jars;
    this.forms = forms;
  }

  @GET
  @Path("/bring")
  @Operation(hidden = true)
  public TemplateInstance bring(@PathParam("code") String code, @QueryParam("room") String room) {
    return bringing(code, room, Form.blank());
  }

  @POST
  @Path("/bring")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response brought(@PathParam("code") String code, MultivaluedMap<String, String> said) {
    return forms.take(
        JarRow.filled(said, "lines", "count"),
        MoveJars.class,
        (key, moved) -> {
          shelves.bring(code, key, moved);
          return UriBuilder.fromPath("/shops/{code}").build(code);
        },
        form -> bringing(code, form.value("room"), form));
  }

  private TemplateInstance bringing(String code, String asked, Form form) {
    List<Choice> rooms = jars.rooms();
    String room =
        rooms.stream()
            .map(Choice::code)
            .filter(one -> one.equals(asked))
            .findFirst()
            .orElse(PlaceCode.COOL_ROOM);
    return Templates.move(
        shops.one(code), false, form, JarRow.in(form, "lines", jars.at(room)), room, rooms);
  }

  @GET
  @Path("/fetch")
  @Operation(hidden = true)
  public TemplateInstance fetch(@PathParam("code") String code) {
    return fetching(code, Form.blank());
  }

  @POST
  @Path("/fetch")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response fetched(@PathParam("code") String code, MultivaluedMap<String, String> said) {
    return forms.take(
        JarRow.filled(said, "lines", "count"),
        MoveJars.class,
        (key, moved) -> {
          shelves.fetch(code, key, moved);
          return UriBuilder.fromPath("/shops/{code}").build(code);
        },
        form -> fetching(code, form));
  }

  private TemplateInstance fetching(String code, Form form) {
    Shop shop = shops.one(code);
    String to = form.value("room").isEmpty() ? PlaceCode.COOL_ROOM : form.value("room");
    return Templates.move(
        shop, true, form, JarRow.in(form, "lines", jars.at(shop.place())), to, jars.rooms());
  }

  @GET
  @Path("/count")
  @Operation(hidden = true)
  public TemplateInstance count(@PathParam("code") String code, @QueryParam("by") String by) {
    return counting(code, "size".equals(by), Form.blank());
  }

  @POST
  @Path("/count")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response counted(@PathParam("code") String code, MultivaluedMap<String, String> said) {
    return forms.take(
        JarRow.filled(said, "lines", "count", "sold", "broken"),
        CountShop.class,
        (key, count) -> {
          shelves.count(code, key, count);
          return UriBuilder.fromPath("/shops/{code}").build(code);
        },
        form -> counting(code, "size".equals(said.getFirst("by-what")), form));
  }

  private TemplateInstance counting(String code, boolean bySize, Form form) {
    Shop shop = shops.one(code);
    List<JarRow> there = jars.at(shop.place());
    List<JarRow> rows = JarRow.in(form, "lines", bySize ? bySize(there) : there);
    return Templates.count(shop, form, rows, bySize, rows.size());
  }

  /** One row for each size, without lots. */
  private static List<JarRow> bySize(List<JarRow> lots) {
    Map<String, Long> sizes = new java.util.TreeMap<>();
    lots.forEach(lot -> sizes.merge(lot.container(), lot.there(), Long::sum));
    return sizes.entrySet().stream()
        .map(size -> JarRow.of(size.getKey(), null, null, size.getValue(), false))
        .toList();
  }
}
