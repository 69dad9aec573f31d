package org.barreltally.stock.pages;

import io.quarkus.qute.CheckedTemplate;
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
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.stock.CountShelf;
import org.barreltally.stock.StockRow;
import org.barreltally.stock.rest.CountsApi;
import org.barreltally.stock.rest.StockApi;
import org.barreltally.stock.rounds.Rounds;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** A shelf is counted by one person, blind, and the book follows at once. */
@Path("/counts/plain")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class PlainCountPage {

  @CheckedTemplate(basePath = "counts")
  static class Templates {
    static native TemplateInstance plain(
        Form form, CountSheetForm sheet, List<Choice> places, List<Choice> sizes);
  }

  private final CountsApi counts;
  private final StockApi stock;
  private final ContainersApi containers;
  private final PlaceNames places;
  private final Forms forms;
  private final Rounds rounds;
  private final PageFarm farm;

  @Inject
  PlainCountPage(
      CountsApi counts,
      StockApi stock,
      ContainersApi containers,
      PlaceNames places,
      Forms forms,
      Rounds rounds,
      PageFarm farm) {
    this.counts = counts;
    this.stock = stock;
    this.containers = containers;
    this.places = places;
    this.forms = forms;
    this.rounds = rounds;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance plain(@QueryParam("place") String place) {
    return page(
        Form.with(
            "place", place == null || place.isBlank() ? null : place, "countedAt", clockNow()));
  }

  /** By the farm's clock, to the minute. */
  private String clockNow() {
    Instant now = rounds.now();
    return DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm").format(now.atZone(farm.zone(now)));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response counted(MultivaluedMap<String, String> said) {
    return forms.take(
        filledIn(said),
        CountShelf.class,
        (key, shelf) -> CountPages.address(counts.count(key, shelf).getLocation()),
        this::page);
  }

  /** Only what was counted is compared: a line left blank says nothing. */
  private static MultivaluedMap<String, String> filledIn(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> kept = new MultivaluedHashMap<>();
    said.forEach(
        (field, values) -> {
          int end = field.indexOf(']');
          boolean line = field.startsWith("lines[") && end > 0;
          String count = line ? said.getFirst(field.substring(0, end + 1) + ".count") : "told";
          String lot = line ? said.getFirst(field.substring(0, end + 1) + ".given") : null;
          if (lot == null || count != null && !count.isBlank()) {
            kept.put(field, values);
          }
        });
    return kept;
  }

  private TemplateInstance page(Form form) {
    String place = form.value("place");
    List<StockRow> standing =
        place.isEmpty()
            ? List.of()
            : WholeList.of((limit, after) -> stock.list(place, null, null, null, limit, after));
    return Templates.plain(
        form,
        CountSheetForm.of(
            form,
            CountSheetForm.standing(standing),
            CountSheetForm.grades(standing),
            !place.isEmpty()),
        places.own(),
        StockPages.sizes(containers));
  }
}
