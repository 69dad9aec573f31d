package org.barreltally.documents.pages;

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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barreltally.documents.PrintLabels;
import org.barreltally.documents.rest.LabelPrintView;
import org.barreltally.documents.rest.LabelPrintsApi;
import org.barreltally.documents.rest.LabelSheetsApi;
import org.barreltally.lots.rest.LotsApi;
import org.barreltally.lots.rest.TraceView;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Labels of a lot: which were printed, and a print recorded. */
@Path("/lots/{lot}/labels")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class LotLabelsPage {

  @CheckedTemplate(basePath = "labels")
  static class Templates {
    static native TemplateInstance labels(
        String lot,
        boolean held,
        List<LabelPrintView> prints,
        Form form,
        List<Choice> sizes,
        List<Choice> sheets);
  }

  private final LabelPrintsApi api;
  private final LabelSheetsApi sheets;
  private final LotsApi lots;
  private final Forms forms;

  @Inject
  LotLabelsPage(LabelPrintsApi api, LabelSheetsApi sheets, LotsApi lots, Forms forms) {
    this.api = api;
    this.sheets = sheets;
    this.lots = lots;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance labels(
      @PathParam("lot") String lot, @QueryParam("container") String container) {
    return page(lot, Form.with("container", container));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response printed(@PathParam("lot") String lot, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        PrintLabels.class,
        (key, labels) -> {
          api.record(lot, key, labels);
          return UriBuilder.fromPath("/lots/{lot}/labels").build(lot);
        },
        form -> page(lot, form));
  }

  private TemplateInstance page(String lot, Form form) {
    List<LabelPrintView> prints =
        new ArrayList<>(WholeList.of((limit, after) -> api.list(lot, limit, after)));
    Collections.reverse(prints);
    return Templates.labels(lot, lots.at(lot).held(), prints, form, sizes(lot), sheets());
  }

  /** The sizes the lot was packed in. */
  private List<Choice> sizes(String lot) {
    return lots.trace(lot).whereabouts().stream()
        .filter(jars -> lot.equals(jars.lot()))
        .map(TraceView.Jars::container)
        .distinct()
        .sorted()
        .map(size -> new Choice(size, size))
        .toList();
  }

  private List<Choice> sheets() {
    return WholeList.of(sheets::list).stream()
        .map(
            sheet ->
                new Choice(
                    sheet.code(),
                    "%s (%d × %d)".formatted(sheet.name(), sheet.columns(), sheet.rows())))
        .toList();
  }
}
