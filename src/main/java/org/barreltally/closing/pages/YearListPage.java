package org.barreltally.closing.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.barreltally.closing.Year;
import org.barreltally.closing.rest.YearsApi;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The years of the book. */
@Path("/years")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class YearListPage implements MenuEntry {

  @CheckedTemplate(basePath = "years")
  static class Templates {
    static native TemplateInstance list(List<Year> years, int today);
  }

  private final YearsApi api;
  private final PageFarm farm;

  @Inject
  YearListPage(YearsApi api, PageFarm farm) {
    this.api = api;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return Templates.list(api.list().items(), farm.today().getYear());
  }

  @Override
  public String path() {
    return "/years";
  }

  @Override
  public String words() {
    return "years.title";
  }

  @Override
  public Part part() {
    return Part.YEAR;
  }

  @Override
  public int order() {
    return 30;
  }
}
