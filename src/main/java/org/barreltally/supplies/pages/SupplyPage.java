package org.barreltally.supplies.pages;

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
import jakarta.ws.rs.core.UriBuilder;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.barreltally.supplies.SupplyMovement;
import org.barreltally.supplies.rest.SuppliesApi;
import org.barreltally.supplies.rest.SupplyView;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One supply: what came, what was counted, what runs used. */
@Path("/supplies/{code}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SupplyPage {

  @CheckedTemplate(basePath = "supplies")
  static class Templates {
    static native TemplateInstance supply(
        SupplyView supply, List<SupplyMovement> history, LocalDate today);

    static native TemplateInstance receive(SupplyView supply, Form form, LocalDate today);

    static native TemplateInstance count(SupplyView supply, Form form, LocalDate today);
  }

  private final SuppliesApi api;
  private final Forms forms;
  private final PageFarm farm;

  @Inject
  SupplyPage(SuppliesApi api, Forms forms, PageFarm farm) {
    this.api = api;
    this.forms = forms;
    this.farm = farm;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("code") String code) {
    List<SupplyMovement> history =
        new ArrayList<>(WholeList.of((limit, after) -> api.movements(code, limit, after)));
    Collections.reverse(history);
    return Templates.supply(api.one(code), history, farm.today());
  }

  @GET
  @Path("/receive")
  @Operation(hidden = true)
  public TemplateInstance receive(@PathParam("code") String code) {
    return Templates.receive(api.one(code), Form.blank(), farm.today());
  }

  @POST
  @Path("/receive")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response received(@PathParam("code") String code, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SuppliesApi.Receipt.class,
        (key, receipt) -> {
          api.receive(code, key, receipt);
          return address(code);
        },
        form -> Templates.receive(api.one(code), form, farm.today()));
  }

  @GET
  @Path("/count")
  @Operation(hidden = true)
  public TemplateInstance count(@PathParam("code") String code) {
    return Templates.count(api.one(code), Form.blank(), farm.today());
  }

  @POST
  @Path("/count")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response counted(@PathParam("code") String code, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SuppliesApi.Count.class,
        (key, count) -> {
          api.count(code, key, count);
          return address(code);
        },
        form -> Templates.count(api.one(code), form, farm.today()));
  }

  static URI address(String code) {
    return UriBuilder.fromPath("/supplies/{code}").build(code);
  }
}
