package org.barreltally.people.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
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
import java.util.List;
import org.barreltally.people.Role;
import org.barreltally.people.rest.PeopleApi;
import org.barreltally.people.rest.PeopleApi.Somebody;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.MenuEntry;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** Everybody who signs in, and what the owner changes about them. */
@Path("/people")
@Produces(MediaType.TEXT_HTML)
@Blocking
@RolesAllowed("owner")
public class PeoplePages implements MenuEntry {

  @CheckedTemplate(basePath = "people")
  static class Templates {
    static native TemplateInstance list(List<Somebody> people, Form form, List<Choice> roles);

    static native TemplateInstance one(Somebody person, Form form, List<Choice> roles);

    static native TemplateInstance password(Somebody person);
  }

  private final PeopleApi api;
  private final Forms forms;

  @Inject
  PeoplePages(PeopleApi api, Forms forms) {
    this.api = api;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance list() {
    return list(Form.blank());
  }

  private TemplateInstance list(Form form) {
    return Templates.list(api.list().items(), form, roles());
  }

  /** The password is shown in the answer itself, since it is kept nowhere. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response join(MultivaluedMap<String, String> said) {
    return forms.answer(
        said,
        PeopleApi.Joining.class,
        (key, joining) -> Templates.password((Somebody) api.join(joining).getEntity()),
        this::list);
  }

  @GET
  @Path("/{name}")
  @Operation(hidden = true)
  public TemplateInstance one(@PathParam("name") String name) {
    return one(name, Form.blank());
  }

  private TemplateInstance one(String name, Form form) {
    return Templates.one(api.one(name), form, roles());
  }

  @POST
  @Path("/{name}/role")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response role(@PathParam("name") String name, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        PeopleApi.NewRole.class,
        (key, role) -> {
          api.changeRole(name, role);
          return address(name);
        },
        form -> one(name, form));
  }

  @POST
  @Path("/{name}/password")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response password(@PathParam("name") String name, MultivaluedMap<String, String> said) {
    return forms.answer(
        said,
        Nothing.class,
        (key, nothing) -> Templates.password(api.newPassword(name)),
        form -> one(name, form));
  }

  @POST
  @Path("/{name}/codes")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response stopCodes(@PathParam("name") String name, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          api.stopCodes(name);
          return address(name);
        },
        form -> one(name, form));
  }

  @POST
  @Path("/{name}/leave")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response leave(@PathParam("name") String name, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> {
          api.leave(name);
          return address(name);
        },
        form -> one(name, form));
  }

  @POST
  @Path("/{name}/names")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response removeNames(@PathParam("name") String name, MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) -> address(api.removeNames(name).name()),
        form -> one(name, form));
  }

  @POST
  @Path("/{name}/return")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response comeBack(@PathParam("name") String name, MultivaluedMap<String, String> said) {
    return forms.answer(
        said,
        Nothing.class,
        (key, nothing) -> Templates.password(api.comeBack(name)),
        form -> one(name, form));
  }

  /** A form that asks for nothing more. */
  record Nothing() {}

  private static List<Choice> roles() {
    return Choice.of(Role.values(), "people.role");
  }

  private static URI address(String name) {
    return UriBuilder.fromPath("/people/{name}").build(name);
  }

  @Override
  @PermitAll
  public String path() {
    return "/people";
  }

  @Override
  @PermitAll
  public String words() {
    return "people.title";
  }

  @Override
  @PermitAll
  public Part part() {
    return Part.HOUSE;
  }

  @Override
  @PermitAll
  public int order() {
    return 20;
  }
}
