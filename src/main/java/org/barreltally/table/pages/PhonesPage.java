package org.barreltally.table.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.RawString;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.vertx.core.http.HttpServerRequest;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
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
import org.barreltally.refusal.Refusal;
import org.barreltally.table.Lead;
import org.barreltally.table.Pairing;
import org.barreltally.table.Phone;
import org.barreltally.table.rest.LeadsApi;
import org.barreltally.table.rest.PhonesApi;
import org.barreltally.web.pages.CodePicture;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.Words;
import org.eclipse.microprofile.openapi.annotations.Operation;

/**
 * The phones of show tables: made to trust this program, paired, cut off; and who waits for a call.
 */
@Path("/phones")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed("owner")
@Blocking
public class PhonesPage implements MenuEntry {

  /** Where phones come in, and how to get there. */
  public record Way(
      boolean https, String name, List<String> names, String trust, RawString trustCode) {

    /** This page with that name chosen. */
    public String here() {
      return "/phones?at=" + name;
    }
  }

  /** A code just made. */
  public record Shown(Pairing pairing, String address, RawString code) {}

  /** Nothing needs to be said. */
  public record Nothing() {}

  @CheckedTemplate(basePath = "table")
  static class Templates {
    static native TemplateInstance phones(
        List<Phone> phones, List<Lead> leads, Way way, Shown shown, Form form);
  }

  private final PhonesApi phones;
  private final LeadsApi leads;
  private final TableAddress addresses;
  private final CodePicture codes;
  private final Forms forms;
  private final HttpServerRequest request;

  @Inject
  PhonesPage(
      PhonesApi phones,
      LeadsApi leads,
      TableAddress addresses,
      CodePicture codes,
      Forms forms,
      HttpServerRequest request) {
    this.phones = phones;
    this.leads = leads;
    this.addresses = addresses;
    this.codes = codes;
    this.forms = forms;
    this.request = request;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@QueryParam("at") String at) {
    return page(at, null, Form.blank());
  }

  /** Shows a code in the answer itself: it is a secret, and stands in no address. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response pair(@QueryParam("at") String at, MultivaluedMap<String, String> said) {
    PhonesApi.NewPhone wanted = forms.peek(said, PhonesApi.NewPhone.class);
    try {
      Pairing pairing = (Pairing) phones.open(wanted).getEntity();
      String address = addresses.table(name(at)) + "#pair=" + pairing.code();
      Shown shown = new Shown(pairing, address, code(address, "phones.pair-code"));
      return Response.ok(page(at, shown, Form.blank())).build();
    } catch (Refusal refusal) {
      return Response.status(400).entity(page(at, null, forms.refused(said, refusal))).build();
    }
  }

  @POST
  @Path("/{id}/cut-off")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response cutOff(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          phones.cutOff(id);
          return URI.create("/phones");
        },
        form -> page(null, null, form));
  }

  @POST
  @Path("/leads/{id}/done")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response called(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          leads.done(id);
          return URI.create("/phones");
        },
        form -> page(null, null, form));
  }

  private TemplateInstance page(String at, Shown shown, Form form) {
    String name = name(at);
    Way way =
        new Way(
            addresses.hasHttps(),
            name,
            addresses.choices(request),
            addresses.trust(name),
            code(addresses.trust(name), "phones.trust-code"));
    return Templates.phones(phones.list().items(), leads.open().items(), way, shown, form);
  }

  private String name(String wanted) {
    List<String> names = addresses.choices(request);
    return wanted != null && names.contains(wanted) ? wanted : names.get(0);
  }

  private RawString code(String content, String words) {
    return new RawString(codes.svg(content, Words.of(words)));
  }

  @Override
  @PermitAll
  public String path() {
    return "/phones";
  }

  @Override
  @PermitAll
  public String words() {
    return "phones.title";
  }

  @Override
  @PermitAll
  public Part part() {
    return Part.HOUSE;
  }

  @Override
  @PermitAll
  public int order() {
    return 60;
  }
}
