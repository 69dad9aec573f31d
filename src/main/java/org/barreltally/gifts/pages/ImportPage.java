package org.barreltally.gifts.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barreltally.gifts.rest.GiftOrderFilesApi;
import org.barreltally.gifts.rest.GiftOrdersApi;
import org.barreltally.gifts.rest.OrderView;
import org.barreltally.refusal.Refusal.FieldError;
import org.barreltally.web.ReadAnew;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.HiddenId;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/**
 * A file of recipients becomes an order, or is added to one. Nothing is taken until the whole file
 * is clean; until then every cell that needs mending is shown beside the number of its line.
 */
@Path("/gift-orders/import")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class ImportPage {

  private static final Pattern PLACE = Pattern.compile("line (\\d+)(?:, column (.+))?");

  /** What is read of the form beside the file. */
  public record Asked(String buyer, String order) {}

  /**
   * A cell that needs mending.
   *
   * @param column null for the whole line
   */
  public record BadCell(String line, String column, String message, String anchor) {

    static List<BadCell> of(Form form) {
      List<BadCell> cells = new ArrayList<>();
      if (form.refusal() != null) {
        for (FieldError error : form.refusal().errors()) {
          Matcher place = PLACE.matcher(error.field());
          if (place.matches()) {
            cells.add(
                new BadCell(
                    place.group(1), place.group(2), error.message(), form.anchor(error.field())));
          }
        }
      }
      cells.sort(Comparator.comparingLong(cell -> Long.parseLong(cell.line())));
      return cells;
    }
  }

  @CheckedTemplate(basePath = "gifts")
  static class Templates {
    static native TemplateInstance importFile(Form form, OrderView order, List<BadCell> bad);
  }

  private final GiftOrderFilesApi files;
  private final GiftOrdersApi orders;
  private final Forms forms;

  @Inject
  ImportPage(GiftOrderFilesApi files, GiftOrdersApi orders, Forms forms) {
    this.files = files;
    this.orders = orders;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance blank(@QueryParam("order") UUID order) {
    return shown(order == null ? Form.blank() : Form.with("order", order));
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  @Operation(hidden = true)
  public Response taken(
      @RestForm String token,
      @RestForm String form,
      @RestForm String buyer,
      @RestForm String order,
      @RestForm("file") FileUpload file) {
    MultivaluedMap<String, String> said = new MultivaluedHashMap<>();
    said.putSingle("token", token);
    said.putSingle("form", form);
    put(said, "buyer", buyer);
    put(said, "order", order);
    return forms.take(
        said,
        Asked.class,
        (key, asked) -> {
          byte[] content = content(file);
          if (asked.order() == null) {
            Response taken = files.take(key, asked.buyer(), content);
            return URI.create("/gift-orders/" + ReadAnew.identity(taken.getLocation()));
          }
          UUID id = HiddenId.read(asked.order());
          files.add(id, key, null, content);
          return URI.create("/gift-orders/" + id);
        },
        this::shown);
  }

  private static void put(MultivaluedMap<String, String> said, String field, String text) {
    if (text != null) {
      said.putSingle(field, text);
    }
  }

  private static byte[] content(FileUpload file) {
    try {
      return file == null ? new byte[0] : Files.readAllBytes(file.uploadedFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private TemplateInstance shown(Form form) {
    String order = form.value("order");
    OrderView known =
        order.isEmpty() ? null : (OrderView) orders.one(HiddenId.read(order)).getEntity();
    return Templates.importFile(form, known, BadCell.of(form));
  }
}
