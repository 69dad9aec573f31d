package org.barreltally.web.pages;

import io.quarkus.arc.All;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.barreltally.web.StartPageFigures;
import org.barreltally.web.StartPageFigures.Shelf;
import org.barreltally.web.StartPageFigures.Syrup;
import org.barreltally.web.StartPageNotice;
import org.eclipse.microprofile.openapi.annotations.Operation;

/**
 * What a person sees first after signing in: what is due, low, held or ageing, and how much syrup
 * and how many jars there are.
 */
@Path("/")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class StartPage implements MenuEntry {

  /** Something to see to under its heading. */
  @TemplateData
  public record Part(String words, List<TodayPart.Line> lines) {}

  @CheckedTemplate(basePath = "web")
  static class Templates {
    static native TemplateInstance start(
        LocalDate today, List<String> notices, List<Part> parts, Syrup syrup, Shelf shelf);
  }

  private final StartPageFigures figures;
  private final List<StartPageNotice> notices;
  private final List<TodayPart> parts;
  private final PageFarm farm;

  @Inject
  StartPage(
      StartPageFigures figures,
      @All List<StartPageNotice> notices,
      @All List<TodayPart> parts,
      PageFarm farm) {
    this.figures = figures;
    this.notices = notices;
    this.parts = parts;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show() {
    List<String> said =
        notices.stream().map(StartPageNotice::sentence).flatMap(Optional::stream).toList();
    List<Part> toSeeTo =
        parts.stream()
            .sorted(Comparator.comparingInt(TodayPart::order))
            .map(part -> new Part(part.words(), part.lines()))
            .filter(part -> !part.lines().isEmpty())
            .toList();
    return Templates.start(farm.today(), said, toSeeTo, figures.syrup(), figures.shelf());
  }

  @Override
  public String path() {
    return "/";
  }

  @Override
  public String words() {
    return "today.title";
  }

  @Override
  public MenuEntry.Part part() {
    return MenuEntry.Part.TODAY;
  }

  @Override
  public int order() {
    return 0;
  }
}
