package org.barreltally.web.pages;

import io.quarkus.arc.All;
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
import java.util.Optional;
import org.barreltally.web.StartPageFigures;
import org.barreltally.web.StartPageFigures.BarrelRow;
import org.barreltally.web.StartPageFigures.JarRow;
import org.barreltally.web.StartPageNotice;
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
        List<String> notices, List<BarrelRow> barrels, Total barrelTotal, List<JarRow> jars);
  }

  private final StartPageFigures figures;
  private final List<StartPageNotice> notices;

  @Inject
  StartPage(StartPageFigures figures, @All List<StartPageNotice> notices) {
    this.figures = figures;
    this.notices = notices;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    List<BarrelRow> barrels = figures.barrels();
    List<String> said =
        notices.stream().map(StartPageNotice::sentence).flatMap(Optional::stream).toList();
    return Templates.start(said, barrels, total(barrels), figures.jars());
  }

  private static Total total(List<BarrelRow> barrels) {
    return new Total(
        barrels.stream().map(BarrelRow::weightLb).reduce(BigDecimal.ZERO, BigDecimal::add),
        barrels.stream().map(BarrelRow::gallons).reduce(BigDecimal.ZERO, BigDecimal::add));
  }
}
