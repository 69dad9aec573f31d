package org.barreltally.stock.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import org.barreltally.errands.pages.ErrandPages;
import org.barreltally.errands.rest.ErrandsApi;
import org.barreltally.refusal.InvalidField;
import org.barreltally.stock.OpeningStockErrand;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** What stood in the rooms before the first entry, from a file. */
@Path("/opening-stock")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class OpeningStockPage {

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    static native TemplateInstance opening(Form form);
  }

  private final ErrandsApi errands;
  private final OpeningStockErrand kind;
  private final Forms forms;

  @Inject
  OpeningStockPage(ErrandsApi errands, OpeningStockErrand kind, Forms forms) {
    this.errands = errands;
    this.kind = kind;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank() {
    return Templates.opening(Form.blank());
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  @Operation(hidden = true)
  public Response taken(
      @RestForm String token, @RestForm String form, @RestForm("file") FileUpload file) {
    MultivaluedMap<String, String> said = new MultivaluedHashMap<>();
    said.putSingle("token", token);
    said.putSingle("form", form);
    return forms.take(
        said,
        Nothing.class,
        (key, nothing) ->
            ErrandPages.address(errands.ask(kind, key, new OpeningStockErrand.Asked(text(file)))),
        Templates::opening);
  }

  /** The file is all there is. */
  public record Nothing() {}

  private static String text(FileUpload file) {
    try {
      if (file == null || file.size() == 0) {
        throw new InvalidField("file", "Choose the CSV file.");
      }
      return Files.readString(file.uploadedFile(), StandardCharsets.UTF_8);
    } catch (java.nio.charset.CharacterCodingException e) {
      throw new InvalidField("file", "The file is not in UTF-8. Save it again as CSV in UTF-8.");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
