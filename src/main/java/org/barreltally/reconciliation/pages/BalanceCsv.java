package org.barreltally.reconciliation.pages;

import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.barreltally.reconciliation.rest.ReconciliationApi;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** The lines of a balance for a spreadsheet: kg, gal at 68 °F and jars. */
@Path("/balance/lines.csv")
@Produces("text/csv")
public class BalanceCsv {

  private final ReconciliationApi api;

  @Inject
  BalanceCsv(ReconciliationApi api) {
    this.api = api;
  }

  /** Holds codes and numbers alone, so nothing needs quotes. */
  @GET
  @Operation(hidden = true)
  public String lines(@QueryParam("season") String season, @QueryParam("lot") String lot) {
    BalanceSheet sheet = BalanceSheet.of(api.of(season, lot));
    StringBuilder csv = new StringBuilder("line,mass.kg,volumeAt68F.gal,pieces\r\n");
    Stream.of(sheet.in(), sheet.out(), List.of(sheet.unexplained()), sheet.closing())
        .flatMap(List::stream)
        .forEach(
            row ->
                csv.append(row.line().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .append(',')
                    .append(row.mass().value().toPlainString())
                    .append(',')
                    .append(row.volume().value().toPlainString())
                    .append(',')
                    .append(row.pieces())
                    .append("\r\n"));
    return csv.toString();
  }
}
