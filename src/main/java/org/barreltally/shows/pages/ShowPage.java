package org.barreltally.shows.pages;

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
import org.barreltally.sales.CountNeeded;
import org.barreltally.sales.rest.SalesApi;
import org.barreltally.shows.ShowChangedSince;
import org.barreltally.shows.ShowState;
import org.barreltally.shows.rest.ShowAffairsApi;
import org.barreltally.shows.rest.ShowDetails;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One show: where it stands, what comes next, and all that is known of it. */
@Path("/shows/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ShowPage {

  @CheckedTemplate(basePath = "shows")
  static class Templates {
    static native TemplateInstance show(
        ShowDetails details,
        List<Choice> next,
        boolean mayCallOff,
        Form form,
        String priceList,
        List<CountNeeded> counts,
        int conflicts);

    static native TemplateInstance calloff(ShowDetails details, Form form, String currency);

    static native TemplateInstance pay(ShowDetails details, Form form, String currency);
  }

  private final ShowsApi api;
  private final ShowAffairsApi affairs;
  private final SalesApi sales;
  private final Forms forms;
  private final BookingDesk desk;

  @Inject
  ShowPage(ShowsApi api, ShowAffairsApi affairs, SalesApi sales, Forms forms, BookingDesk desk) {
    this.api = api;
    this.affairs = affairs;
    this.sales = sales;
    this.forms = forms;
    this.desk = desk;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return page(id, Form.blank());
  }

  @POST
  @Path("/state")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response step(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        ShowsApi.NextState.class,
        (key, next) -> {
          try {
            api.step(id, said.getFirst("version"), next);
          } catch (ShowChangedSince e) {
            // A second click finds the show where the first one brought it.
            if (details(id).show().state() != next.state()) {
              throw e;
            }
          }
          return address(id);
        },
        form -> page(id, form));
  }

  @POST
  @Path("/to-dos/{toDo}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response done(
      @PathParam("id") UUID id, @PathParam("toDo") UUID toDo, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        ShowAffairsApi.Nothing.class,
        (key, nothing) -> {
          affairs.done(id, toDo, nothing);
          return address(id);
        },
        form -> page(id, form));
  }

  @GET
  @Path("/call-off")
  @Operation(hidden = true)
  public TemplateInstance callOff(@PathParam("id") UUID id) {
    return Templates.calloff(details(id), Form.blank(), desk.currency());
  }

  @POST
  @Path("/call-off")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response calledOff(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        ShowAffairsApi.CallOff.class,
        (key, why) -> {
          affairs.callOff(id, key, said.getFirst("version"), why);
          return address(id);
        },
        form -> Templates.calloff(details(id), form, desk.currency()));
  }

  @GET
  @Path("/payments")
  @Operation(hidden = true)
  public TemplateInstance pay(@PathParam("id") UUID id) {
    return Templates.pay(details(id), Form.blank(), desk.currency());
  }

  @POST
  @Path("/payments")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response paid(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        ShowAffairsApi.Pay.class,
        (key, payment) -> {
          affairs.pay(id, key, said.getFirst("version"), payment);
          return address(id);
        },
        form -> Templates.pay(details(id), form, desk.currency()));
  }

  private ShowDetails details(UUID id) {
    return (ShowDetails) api.at(id).getEntity();
  }

  private TemplateInstance page(UUID id, Form form) {
    ShowDetails details = details(id);
    return Templates.show(
        details,
        next(details),
        details.next().contains(ShowState.CALLED_OFF),
        form,
        priceList(details),
        sales.countNeeded(details.show().place()).items(),
        sales.conflicts(details.show().place(), null, null).items().size());
  }

  /** What a word brings about; counting, settling and calling off have pages of their own. */
  private static List<Choice> next(ShowDetails details) {
    return Choice.of(
        details.next().stream()
            .filter(state -> state != ShowState.SETTLED && state != ShowState.CALLED_OFF)
            .sorted()
            .toArray(ShowState[]::new),
        "shows.state");
  }

  private String priceList(ShowDetails details) {
    UUID booked = details.show().booking().priceList();
    return booked == null
        ? null
        : desk.priceLists(booked).stream()
            .filter(list -> list.code().equals(booked.toString()))
            .map(Choice::words)
            .findFirst()
            .orElse(null);
  }

  static URI address(UUID id) {
    return URI.create("/shows/" + id);
  }
}
