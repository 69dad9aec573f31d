package org.barreltally.netcontents.pages;

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
import jakarta.ws.rs.core.UriBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.canning.PackSheet;
import org.barreltally.canning.rest.CanningApi;
import org.barreltally.netcontents.NetContentsCheck;
import org.barreltally.netcontents.NetContentsOrder;
import org.barreltally.netcontents.rest.CheckNetContentsApi;
import org.barreltally.netcontents.rest.NetContentsChecksApi;
import org.barreltally.settings.NetContentsRegime;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.Show;
import org.barreltally.web.pages.WholeList;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars of a run are weighed and judged; the checks of the run stand below. */
@Path("/canning/runs/{lot}/net-contents")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class NetContentsPage {

  private static final String WEIGHTS = "netWeights";

  @CheckedTemplate(basePath = "netcontents")
  static class Templates {
    static native TemplateInstance check(
        PackSheet run,
        List<Choice> sizes,
        List<Choice> regimes,
        Form form,
        String weights,
        List<NetContentsCheck> checks);
  }

  private final CheckNetContentsApi api;
  private final NetContentsChecksApi checks;
  private final CanningApi runs;
  private final Forms forms;

  @Inject
  NetContentsPage(
      CheckNetContentsApi api, NetContentsChecksApi checks, CanningApi runs, Forms forms) {
    this.api = api;
    this.checks = checks;
    this.runs = runs;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance check(@PathParam("lot") String lot) {
    return page(lot, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response checked(@PathParam("lot") String lot, MultivaluedMap<String, String> said) {
    return forms.take(
        oneByOne(said),
        NetContentsOrder.class,
        (key, order) -> {
          api.check(lot, order);
          return UriBuilder.fromPath("/canning/runs/{lot}/net-contents")
              .fragment("checks")
              .build(lot);
        },
        form -> page(lot, form));
  }

  /** The weights are typed into one field, apart by spaces, lines or semicolons. */
  private static MultivaluedMap<String, String> oneByOne(MultivaluedMap<String, String> said) {
    MultivaluedMap<String, String> apart = new MultivaluedHashMap<>();
    apart.putAll(said);
    List<String> typed = apart.remove(WEIGHTS);
    if (typed != null) {
      String[] weights = typed.get(0).strip().split("[\\s;]+");
      for (int n = 0; n < weights.length; n++) {
        if (!weights[n].isEmpty()) {
          apart.putSingle(WEIGHTS + "[" + n + "]", weights[n]);
        }
      }
    }
    return apart;
  }

  private TemplateInstance page(String lot, Form form) {
    PackSheet run = runs.at(lot);
    List<NetContentsCheck> done =
        new ArrayList<>(WholeList.of((limit, after) -> checks.list(lot, limit, after)));
    Collections.reverse(done);
    return Templates.check(
        run,
        run.fills().stream()
            .map(
                fill ->
                    new Choice(
                        fill.container(),
                        Words.of("netcontents.size", fill.container(), Show.count(fill.count()))))
            .toList(),
        Choice.of(NetContentsRegime.values(), "netcontents.regime"),
        form,
        form.rows(WEIGHTS, 0).stream()
            .map(n -> form.value(form.row(WEIGHTS, n)))
            .collect(Collectors.joining(" ")),
        done);
  }
}
