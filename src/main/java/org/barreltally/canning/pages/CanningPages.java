package org.barreltally.canning.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barreltally.canning.PackSheet;
import org.barreltally.canning.rest.CanningApi;
import org.barreltally.web.pages.Column;
import org.barreltally.web.pages.Listing;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Canning runs. */
@Path("/canning")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CanningPages implements MenuEntry {

  private static final List<Column<PackSheet>> COLUMNS =
      List.of(
          Column.by("lot", PackSheet::lot),
          Column.by("on", PackSheet::on),
          Column.by("grade", PackSheet::grade),
          Column.by("jars", CanningPages::jars),
          Column.by("blend", run -> run.blend().mass().value()),
          Column.by("shrink", run -> run.shrink().percent()));

  @CheckedTemplate(basePath = "canning")
  static class Templates {
    static native TemplateInstance list(Listing<Run> list);

    static native TemplateInstance run(PackSheet run, ShrinkBars bars);
  }

  /**
   * A run in the list.
   *
   * @param jars good ones of all sizes
   */
  public record Run(PackSheet sheet, int jars) {}

  private final CanningApi api;

  @Inject
  CanningPages(CanningApi api) {
    this.api = api;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list(@Context UriInfo uri) {
    List<PackSheet> runs = new ArrayList<>(WholeList.of(api::list));
    runs.sort(Comparator.comparing(PackSheet::on).thenComparing(PackSheet::lot).reversed());
    return Templates.list(Listing.of(runs, COLUMNS, uri).as(sheet -> new Run(sheet, jars(sheet))));
  }

  @GET
  @Path("/runs/{lot}")
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("lot") String lot) {
    PackSheet run = api.at(lot);
    return Templates.run(run, ShrinkBars.of(run.shrink()));
  }

  private static int jars(PackSheet run) {
    return run.fills().stream().mapToInt(PackSheet.Filled::count).sum();
  }

  @Override
  public String path() {
    return "/canning";
  }

  @Override
  public String words() {
    return "canning.title";
  }

  @Override
  public Part part() {
    return Part.SYRUP;
  }

  @Override
  public int order() {
    return 20;
  }
}
