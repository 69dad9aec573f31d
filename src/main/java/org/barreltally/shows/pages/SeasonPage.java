package org.barreltally.shows.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.ledger.Days;
import org.barreltally.shows.Clashes;
import org.barreltally.shows.ShowClash;
import org.barreltally.shows.Shows;
import org.barreltally.shows.rest.SeasonApi;
import org.barreltally.web.pages.MenuEntry;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The season: what is due next, its months drawn, and its weeks in words. */
@Path("/shows")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SeasonPage implements MenuEntry {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance season(
        SeasonApi.View season, String year, SeasonPicture picture, List<SeasonWeeks.Week> weeks);
  }

  private final SeasonApi api;
  private final Shows shows;
  private final Clashes clashes;
  private final Days days;

  @Inject
  SeasonPage(SeasonApi api, Shows shows, Clashes clashes, Days days) {
    this.api = api;
    this.shows = shows;
    this.clashes = clashes;
    this.days = days;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance season(@QueryParam("year") String year) {
    SeasonApi.View season = api.season(year == null || year.isBlank() ? null : year);
    Map<UUID, List<ShowClash.Bound>> bound =
        season.shows().stream()
            .collect(
                Collectors.toMap(
                    entry -> entry.show().id(),
                    entry -> clashes.boundElsewhere(shows.at(entry.show().id()))));
    List<SeasonEntry> entries = SeasonEntry.of(season, bound, days::dateOf);
    return Templates.season(
        season,
        String.valueOf(season.year()),
        SeasonPicture.of(entries, season.today()),
        SeasonWeeks.of(entries, season.today()));
  }

  @Override
  public String path() {
    return "/shows";
  }

  @Override
  public String words() {
    return "shows.title";
  }

  @Override
  public Part part() {
    return Part.SALES;
  }

  @Override
  public int order() {
    return 10;
  }
}
