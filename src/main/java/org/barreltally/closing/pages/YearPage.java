package org.barreltally.closing.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
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
import java.net.URI;
import java.util.List;
import org.barreltally.closing.YearBook;
import org.barreltally.closing.rest.YearsApi;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What the book says of a year, and closing it for ever. */
@Path("/years/{year}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class YearPage {

  /** The year typed once more, so that no single click closes one. */
  public record TypedAgain(String year) {}

  /**
   * A line of a year.
   *
   * @param container null for syrup in bulk
   * @param pieces of jars
   * @param mass of syrup in bulk
   */
  @TemplateData
  public record Row(String name, String container, Long pieces, Quantity mass) {

    static Row of(String name, String container, long amount) {
      return container == null
          ? new Row(name, null, null, Quantity.rounded(amount / 1000.0, Unit.KG, 3))
          : new Row(name, container, amount, null);
    }
  }

  @CheckedTemplate(basePath = "years")
  static class Templates {
    static native TemplateInstance one(
        String year, YearBook book, List<Row> standing, List<Row> flows, boolean over, Form form);
  }

  private final YearsApi api;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  YearPage(YearsApi api, PageFarm farm, Forms forms) {
    this.api = api;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("year") int year) {
    return shown(year, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response closed(@PathParam("year") int year, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        TypedAgain.class,
        (key, again) -> {
          if (!String.valueOf(year).equals(again.year())) {
            throw new InvalidField("year", "Type " + year + " to close it for ever.");
          }
          api.close(year);
          return URI.create("/years/" + year);
        },
        form -> shown(year, form));
  }

  private TemplateInstance shown(int year, Form form) {
    YearBook book = api.book(year);
    return Templates.one(
        String.valueOf(year),
        book,
        book.standing().stream()
            .map(row -> Row.of(row.lot(), row.container(), row.amount()))
            .toList(),
        book.flows().stream()
            .map(row -> Row.of(row.account(), row.container(), row.amount()))
            .toList(),
        year < farm.today().getYear(),
        form);
  }
}
