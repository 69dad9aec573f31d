package org.barreltally.pricing.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.containers.Container;
import org.barreltally.containers.Containers;
import org.barreltally.measure.ColorClass;
import org.barreltally.pricing.Audience;
import org.barreltally.pricing.Deal;
import org.barreltally.pricing.EnterPriceList;
import org.barreltally.pricing.PriceLine;
import org.barreltally.pricing.ProductClass;
import org.barreltally.pricing.rest.PriceListApi;
import org.barreltally.pricing.rest.PriceListView;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.HiddenId;
import org.barreltally.web.pages.OfferedRows;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A price list, or a new version of one, is entered in a table of sizes and grades. */
@Path("/prices/new")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NewListPage {

  private static final int MOST = 500;
  private static final String LINES = "lines";
  private static final String CLASS = "class.";

  @CheckedTemplate(basePath = "prices")
  static class Templates {
    static native TemplateInstance enter(
        Form form,
        List<SizeRow> rows,
        List<Choice> audiences,
        List<Choice> sizes,
        List<Choice> grades,
        List<Choice> classes,
        PriceListView replaced,
        String today,
        String currency);
  }

  /** A price to fill in: a size in a grade, or in every grade that has no price of its own. */
  public record Cell(Container size, ColorClass grade) {

    List<String> key() {
      return List.of(size.code(), grade == null ? "" : grade.code());
    }
  }

  /** The prices of a size. */
  @TemplateData
  public record SizeRow(Container size, List<OfferedRows.Row<Cell>> cells) {

    /** The field in which the class stands that the size is taxed in. */
    public String taxedField() {
      return CLASS + size.code();
    }
  }

  private final PriceListsApi api;
  private final PriceListApi one;
  private final Containers containers;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  NewListPage(
      PriceListsApi api, PriceListApi one, Containers containers, Forms forms, PageFarm farm) {
    this.api = api;
    this.one = one;
    this.containers = containers;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(
      @QueryParam("replaces") UUID replaces, @QueryParam("audience") String audience) {
    return page(replaces == null ? Form.with("audience", audience) : filled(replaces));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response entered(MultivaluedMap<String, String> said) {
    return forms.take(
        priced(said),
        EnterPriceList.class,
        (key, list) -> {
          String path = api.enter(key, said.getFirst("standing"), list).getLocation().getPath();
          return URI.create("/prices" + path.substring(path.lastIndexOf('/')));
        },
        this::page);
  }

  /** The lines with a price, each with the class that its size is taxed in. */
  private static MultivaluedMap<String, String> priced(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> kept =
        new MultivaluedHashMap<>(
            OfferedRows.without(
                OfferedRows.without(said, LINES, "price"), "deals", "count", "price"));
    for (String field : List.copyOf(kept.keySet())) {
      if (field.startsWith(LINES + "[") && field.endsWith("].container")) {
        String taxed = said.getFirst(CLASS + said.getFirst(field));
        if (taxed != null) {
          kept.putSingle(field.replace("].container", "].productClass"), taxed);
        }
      }
    }
    return kept;
  }

  /** The form with what the list to be replaced says. */
  private Form filled(UUID replaces) {
    Response read = one.one(replaces);
    PriceListView list = (PriceListView) read.getEntity();
    List<Object> pairs = new ArrayList<>();
    pairs.addAll(List.of("replaces", replaces.toString()));
    pairs.addAll(List.of("standing", read.getEntityTag().getValue()));
    pairs.addAll(List.of("name", list.name()));
    pairs.addAll(List.of("audience", list.audience().code()));
    pairs.addAll(List.of("validFrom", latest(list)));
    if (list.taxIncluded()) {
      pairs.addAll(List.of("taxIncluded", "true"));
    }
    for (int n = 0; n < list.lines().size(); n++) {
      PriceLine line = list.lines().get(n);
      pairs.addAll(List.of("lines[" + n + "].container", line.container()));
      if (line.grade() != null) {
        pairs.addAll(List.of("lines[" + n + "].grade", line.grade().code()));
      }
      pairs.addAll(List.of("lines[" + n + "].price", line.price().amount().toPlainString()));
      pairs.addAll(List.of(CLASS + line.container(), line.productClass().code()));
    }
    for (int n = 0; n < list.deals().size(); n++) {
      Deal deal = list.deals().get(n);
      pairs.addAll(List.of("deals[" + n + "].container", deal.container()));
      if (deal.grade() != null) {
        pairs.addAll(List.of("deals[" + n + "].grade", deal.grade().code()));
      }
      pairs.addAll(List.of("deals[" + n + "].count", String.valueOf(deal.count())));
      pairs.addAll(List.of("deals[" + n + "].price", deal.price().amount().toPlainString()));
    }
    return Form.with(pairs.toArray());
  }

  private String latest(PriceListView list) {
    return (list.validFrom().isAfter(farm.today()) ? list.validFrom() : farm.today()).toString();
  }

  private TemplateInstance page(Form form) {
    List<Container> sizes = containers.list(null, MOST);
    String replaces = form.value("replaces");
    PriceListView replaced =
        replaces.isEmpty() ? null : (PriceListView) one.one(HiddenId.read(replaces)).getEntity();
    return Templates.enter(
        form,
        rows(form, sizes),
        Choice.of(Audience.values(), "prices.audience"),
        sizes.stream()
            .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
            .toList(),
        Choice.of(ColorClass.values(), "common.grade"),
        Choice.of(ProductClass.values(), "prices.class"),
        replaced,
        farm.today().toString(),
        replaced == null ? farm.currency() : replaced.currency());
  }

  private static List<SizeRow> rows(Form form, List<Container> sizes) {
    List<Cell> cells = sizes.stream().flatMap(size -> cells(size).stream()).toList();
    Map<String, SizeRow> rows = new LinkedHashMap<>();
    OfferedRows.of(form, LINES, cells, Cell::key, List.of("container", "grade"), 0)
        .offered()
        .forEach(
            row ->
                rows.computeIfAbsent(
                        row.what().size().code(),
                        code -> new SizeRow(row.what().size(), new ArrayList<>()))
                    .cells()
                    .add(row));
    return List.copyOf(rows.values());
  }

  private static List<Cell> cells(Container size) {
    List<Cell> cells = new ArrayList<>();
    cells.add(new Cell(size, null));
    Arrays.stream(ColorClass.values()).forEach(grade -> cells.add(new Cell(size, grade)));
    return cells;
  }
}
