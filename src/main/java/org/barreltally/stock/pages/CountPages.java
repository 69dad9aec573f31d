package org.barreltally.stock.pages;

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
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.stock.rest.CountRoundsApi;
import org.barreltally.stock.rest.CountsApi;
import org.barreltally.web.Because;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Counting rounds: two people count a place blind, and the book follows what they agree on. */
@Path("/counts")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CountPages implements MenuEntry {

  private static final List<Column<CountRoundsApi.Round>> COLUMNS =
      List.of(
          Column.by("opened", CountRoundsApi.Round::openedAt),
          Column.by("place", CountRoundsApi.Round::place),
          Column.by("state", CountRoundsApi.Round::state));

  @CheckedTemplate(basePath = "counts")
  static class Templates {
    static native TemplateInstance list(Listing<Row> list, Form form, List<Choice> places);

    static native TemplateInstance round(CountRoundsApi.Round round, String place, Form form);

    static native TemplateInstance posted(CountsApi.KeptCount count, String place, long off);
  }

  /** A round in the list. */
  public record Row(CountRoundsApi.Round round, String place) {}

  private final CountRoundsApi rounds;
  private final CountsApi counts;
  private final PlaceNames places;
  private final Forms forms;
  private final UriInfo uri;

  @Inject
  CountPages(CountRoundsApi rounds, CountsApi counts, PlaceNames places, Forms forms, UriInfo uri) {
    this.rounds = rounds;
    this.counts = counts;
    this.places = places;
    this.forms = forms;
    this.uri = uri;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return list(Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response open(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        CountRoundsApi.Open.class,
        (key, place) -> address(rounds.open(key, place).getLocation()),
        this::list);
  }

  private TemplateInstance list(Form form) {
    Map<String, String> names = places.all();
    List<CountRoundsApi.Round> all = new ArrayList<>(WholeList.of(rounds::list));
    Collections.reverse(all);
    return Templates.list(
        Listing.of(all, COLUMNS, uri)
            .as(round -> new Row(round, names.getOrDefault(round.place(), round.place()))),
        form,
        places.own());
  }

  @GET
  @Path("/{id}")
  @Operation(hidden = true)
  public TemplateInstance round(@PathParam("id") UUID id) {
    return round(id, Form.blank());
  }

  @POST
  @Path("/{id}/give-up")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response giveUp(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Because.class,
        (key, because) -> {
          rounds.giveUp(id, because);
          return URI.create("/counts/" + id);
        },
        form -> round(id, form));
  }

  private TemplateInstance round(UUID id, Form form) {
    CountRoundsApi.Round round = rounds.one(id);
    return Templates.round(round, places.all().getOrDefault(round.place(), round.place()), form);
  }

  /** A count that the book followed. */
  @GET
  @Path("/posted/{id}")
  @Operation(hidden = true)
  public TemplateInstance posted(@PathParam("id") UUID id) {
    CountsApi.KeptCount count = counts.one(id);
    return Templates.posted(
        count,
        places.all().getOrDefault(count.place(), count.place()),
        count.lines().stream().filter(line -> line.book() != line.counted()).count());
  }

  /** The page of what the interface stored. */
  static URI address(URI stored) {
    return URI.create(
        stored
            .getPath()
            .replace("/api/stock/count-rounds/", "/counts/")
            .replace("/api/stock/counts/", "/counts/posted/"));
  }

  @Override
  public String path() {
    return "/counts";
  }

  @Override
  public String words() {
    return "counts.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 40;
  }
}
