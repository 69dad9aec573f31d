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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.pages.PlaceNames;
import org.barreltally.stock.Cause;
import org.barreltally.stock.StockCount;
import org.barreltally.stock.rest.CountRoundsApi;
import org.barreltally.stock.rounds.Rounds;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What two counters agree on, beside the book, before the book follows. */
@Path("/counts/{id}/post")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class CountPostingPage {

  @CheckedTemplate(basePath = "counts")
  static class Templates {
    static native TemplateInstance post(
        CountRoundsApi.Round round,
        String place,
        Form form,
        List<Row> off,
        int same,
        List<Choice> causes);
  }

  /**
   * A line that is off and, if it is short, where its cause stands.
   *
   * @param n null where no cause can be given
   */
  public record Row(Integer n, StockCount.Line line) {

    public String field(String name) {
      return "causes[" + n + "]." + name;
    }

    public boolean isShort() {
      return n != null;
    }
  }

  private final CountRoundsApi api;
  private final Rounds rounds;
  private final PlaceNames places;
  private final Forms forms;

  @Inject
  CountPostingPage(CountRoundsApi api, Rounds rounds, PlaceNames places, Forms forms) {
    this.api = api;
    this.rounds = rounds;
    this.places = places;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance post(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response posted(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        known(said),
        CountRoundsApi.Posting.class,
        (key, posting) -> CountPages.address(api.post(id, key, posting).getLocation()),
        form -> page(id, form));
  }

  /** A line names its jars whether a cause is known or not; without one nothing is said of it. */
  private static MultivaluedMap<String, String> known(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> kept = new MultivaluedHashMap<>();
    said.forEach(
        (field, values) -> {
          int end = field.indexOf(']');
          String cause =
              field.startsWith("causes[") && end > 0
                  ? said.getFirst(field.substring(0, end + 1) + ".cause")
                  : "told";
          if (cause != null && !cause.isBlank()) {
            kept.put(field, values);
          }
        });
    return kept;
  }

  private TemplateInstance page(UUID id, Form form) {
    CountRoundsApi.Round round = api.one(id);
    List<StockCount.Line> lines = rounds.found(id);
    List<Row> off = new ArrayList<>();
    int next = form.rows("causes", 0).size();
    for (StockCount.Line line : lines) {
      if (line.difference() != 0) {
        boolean cause = line.difference() < 0 && line.suspectedSwap() == null;
        Integer typed = cause ? typed(form, line) : null;
        off.add(new Row(cause && typed == null ? Integer.valueOf(next++) : typed, line));
      }
    }
    return Templates.post(
        round,
        places.all().getOrDefault(round.place(), round.place()),
        form,
        off,
        lines.size() - off.size(),
        Choice.of(Cause.values(), "stock.cause"));
  }

  private static Integer typed(Form form, StockCount.Line line) {
    return form.rows("causes", 0).stream()
        .filter(
            n ->
                form.value(form.row("causes", n, "container")).equals(line.container())
                    && form.value(form.row("causes", n, "lot")).equals(line.lot()))
        .findFirst()
        .orElse(null);
  }
}
