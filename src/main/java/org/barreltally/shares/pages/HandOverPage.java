package org.barreltally.shares.pages;

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
import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.barreltally.ledger.PlaceCode;
import org.barreltally.shares.HandOver;
import org.barreltally.shares.rest.SharesApi;
import org.barreltally.stock.pages.RoomJars;
import org.barreltally.sugarbush.rest.LeaseView;
import org.barreltally.sugarbush.rest.LeasesApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.JarRow;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Jars are handed to a landowner. */
@Path("/leases/{id}/hand-over")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class HandOverPage {

  @CheckedTemplate(basePath = "shares")
  static class Templates {
    static native TemplateInstance handOver(
        LeaseView lease, Form form, List<JarRow> jars, String room, List<Choice> rooms);
  }

  private final LeasesApi leases;
  private final SharesApi shares;
  private final RoomJars jars;
  private final Forms forms;

  @Inject
  HandOverPage(LeasesApi leases, SharesApi shares, RoomJars jars, Forms forms) {
    this.leases = leases;
    this.shares = shares;
    this.jars = jars;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(@PathParam("id") UUID id, @QueryParam("room") String room) {
    return shown(id, room, Form.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response handed(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        JarRow.filled(said, "lines", "count"),
        HandOver.class,
        (key, hand) -> {
          shares.handOver(id, key, hand);
          return URI.create("/leases/" + id);
        },
        form -> shown(id, form.value("room"), form));
  }

  private TemplateInstance shown(UUID id, String asked, Form form) {
    List<Choice> rooms = jars.rooms();
    String room =
        rooms.stream()
            .map(Choice::code)
            .filter(code -> code.equals(asked))
            .findFirst()
            .orElse(PlaceCode.COOL_ROOM);
    return Templates.handOver(
        leases.one(id), form, JarRow.in(form, "lines", jars.at(room)), room, rooms);
  }
}
