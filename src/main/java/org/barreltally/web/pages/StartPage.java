package org.barreltally.web.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.web.StartPageFigures;
import org.barreltally.web.StartPageFigures.BarrelRow;
import org.barreltally.web.StartPageFigures.JarRow;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What a person sees first after signing in: what is in barrels and what stands in jars. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class StartPage {

  /** What all barrels hold together, of the figures as shown. */
  record Total(BigDecimal weightLb, BigDecimal gallons) {}

  @CheckedTemplate(basePath = "web")
  static class Templates {
    static native TemplateInstance start(
        List<BarrelRow> barrels, Total barrelTotal, List<JarRow> jars);
  }

  private final StartPageFigures figures;

  @Inject
  StartPage(StartPageFigures figures) {
    this.figures = figures;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    List<BarrelRow> barrels = figures.barrels();
    return Templates.start(barrels, total(barrels), figures.jars());
  }

  private static Total total(List<BarrelRow> barrels) {
    return new Total(
        barrels.stream().map(BarrelRow::weightLb).reduce(BigDecimal.ZERO, BigDecimal::add),
        barrels.stream().map(BarrelRow::gallons).reduce(BigDecimal.ZERO, BigDecimal::add));
  }
}
