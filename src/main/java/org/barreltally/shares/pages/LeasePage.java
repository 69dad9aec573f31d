package org.barreltally.shares.pages;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.BadRequestException;
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
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.rest.MovementsApi;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.shares.rest.SharesApi;
import org.barreltally.shares.rest.StatementView;
import org.barreltally.sugarbush.ContainerCharge;
import org.barreltally.sugarbush.LeaseTerms;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.sugarbush.pages.LeaseChoices;
import org.barreltally.sugarbush.rest.LeaseView;
import org.barreltally.sugarbush.rest.LeasesApi;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.SeveralForms;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** One lease: taps, terms, the statement, and the season's close. */
@Path("/leases/{id}")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class LeasePage {

  private static final int CHARGES_MORE = 2;

  /**
   * What the page shows and offers.
   *
   * @param charges rows for what containers count for
   */
  public record Shown(
      LeaseView lease, StatementView statement, LeaseChoices choices, int charges) {}

  @CheckedTemplate(basePath = "shares")
  static class Templates {
    static native TemplateInstance lease(Shown shown, SeveralForms forms);
  }

  private final LeasesApi leases;
  private final SharesApi shares;
  private final MovementsApi movements;
  private final Containers containers;
  private final PriceListsApi lists;
  private final PageFarm farm;
  private final Forms forms;

  @Inject
  LeasePage(
      LeasesApi leases,
      SharesApi shares,
      MovementsApi movements,
      Containers containers,
      PriceListsApi lists,
      PageFarm farm,
      Forms forms) {
    this.leases = leases;
    this.shares = shares;
    this.movements = movements;
    this.containers = containers;
    this.lists = lists;
    this.farm = farm;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@PathParam("id") UUID id) {
    return shown(id, SeveralForms.blank());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response act(@PathParam("id") UUID id, MultivaluedMap<String, String> said) {
    return switch (String.valueOf(said.getFirst(SeveralForms.FIELD))) {
      case "taps" -> take(id, said, TapCount.class, (key, count) -> leases.count(id, key, count));
      case "terms" ->
          take(id, said, LeaseTerms.class, (key, terms) -> leases.agreeAnew(id, key, terms));
      case "close" ->
          take(id, said, SharesApi.Close.class, (key, close) -> shares.close(id, key, close));
      case "reverse" -> reversed(id, said);
      default -> throw new BadRequestException();
    };
  }

  /** Takes a hand-over of this lease back. */
  private Response reversed(UUID id, MultivaluedMap<String, String> said) {
    String movement = said.getFirst("movement");
    boolean its =
        shares.statement(id, null).delivered().stream()
            .anyMatch(line -> line.movement().toString().equals(movement));
    if (!its) {
      throw new BadRequestException();
    }
    return take(
        id,
        said,
        MovementsApi.Reversal.class,
        (key, why) -> movements.reverse(UUID.fromString(movement), key, why));
  }

  private interface Act<T> {
    void does(String key, T said);
  }

  private <T> Response take(
      UUID id, MultivaluedMap<String, String> said, Class<T> record, Act<T> act) {
    String what = said.getFirst(SeveralForms.FIELD);
    return forms.take(
        said,
        record,
        (key, read) -> {
          act.does(key, read);
          return URI.create("/leases/" + id);
        },
        form -> shown(id, SeveralForms.with(what, form)));
  }

  private TemplateInstance shown(UUID id, SeveralForms several) {
    LeaseView lease = leases.one(id);
    several.beginning("terms", terms(lease));
    return Templates.lease(
        new Shown(
            lease,
            shares.statement(id, null),
            LeaseChoices.of(containers, lists, farm),
            lease.containerCharges().size() + CHARGES_MORE),
        several);
  }

  private static Form terms(LeaseView lease) {
    List<Object> known =
        new ArrayList<>(
            Arrays.asList(
                "basis", lease.basis(),
                "governs", lease.governs(),
                "ratePerTap", lease.ratePerTap().amount(),
                "price", lease.price() == null ? null : lease.price().amount(),
                "priceList", lease.priceList()));
    int n = 0;
    for (ContainerCharge charge : lease.containerCharges()) {
      known.addAll(
          List.of(
              "containerCharges[" + n + "].container",
              charge.container(),
              "containerCharges[" + n + "].charge",
              charge.charge().amount()));
      n++;
    }
    return Form.with(known.toArray());
  }
}
