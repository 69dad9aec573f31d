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
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.stock.StockRow;
import org.barreltally.stock.rest.CountRoundsApi;
import org.barreltally.stock.rest.StockApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The sheet of the next counter of a round, or of the recount. It shows no figure of the book. */
@Path("/counts/{id}/sheet")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CountSheetPage {

  @CheckedTemplate(basePath = "counts")
  static class Templates {
    static native TemplateInstance sheet(
        CountRoundsApi.Round round,
        String place,
        Form form,
        CountSheetForm sheet,
        List<Choice> sizes);
  }

  private final CountRoundsApi rounds;
  private final StockApi stock;
  private final ContainersApi containers;
  private final PlaceNames places;
  private final Forms forms;

  @Inject
  CountSheetPage(
      CountRoundsApi rounds,
      StockApi stock,
      ContainersApi containers,
      PlaceNames places,
      Forms forms) {
    this.rounds = rounds;
    this.stock = stock;
    this.containers = containers;
    this.places = places;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance sheet(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response filled(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        CountRoundsApi.Sheet.class,
        (key, sheet) -> {
          rounds.fill(id, key, sheet);
          return URI.create("/counts/" + id);
        },
        form -> page(id, form));
  }

  private TemplateInstance page(UUID id, Form form) {
    CountRoundsApi.Round round = rounds.one(id);
    List<StockRow> standing =
        WholeList.of((limit, after) -> stock.list(round.place(), null, null, null, limit, after));
    boolean again = "recount".equals(round.state());
    List<CountSheetForm.Jar> asked =
        again
            ? round.toRecount().stream()
                .map(jar -> new CountSheetForm.Jar(jar.container(), jar.lot()))
                .toList()
            : CountSheetForm.standing(standing);
    return Templates.sheet(
        round,
        places.all().getOrDefault(round.place(), round.place()),
        form,
        CountSheetForm.of(form, asked, CountSheetForm.grades(standing), !again),
        StockPages.sizes(containers));
  }
}
