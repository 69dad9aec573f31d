package org.barreltally.shares.rest;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.shares.ShareStatement;
import org.barreltally.sugarbush.Basis;
import org.barreltally.sugarbush.Lease;
import org.barreltally.sugarbush.TapCount;
import org.barreltally.sugarbush.TapKind;

/** A statement as it is answered; see {@link ShareStatement} for its sums. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record StatementView(
    UUID lease,
    String landowner,
    String bush,
    int season,
    Basis basis,
    TapKind governs,
    List<TapCount> taps,
    int tapsCounted,
    Money ratePerTap,
    Money price,
    Money owed,
    Quantity owedVolume,
    List<ShareStatement.CarriedIn> carriedIn,
    List<ShareStatement.Line> delivered,
    Money deliveredValue,
    Quantity deliveredVolume,
    Money carried,
    Quantity carriedVolume,
    Money deliveredListValue,
    LocalDate closedOn) {

  static StatementView of(ShareStatement said) {
    Lease lease = said.lease();
    return new StatementView(
        lease.id(),
        lease.landowner().name(),
        lease.bush(),
        lease.season(),
        lease.terms().basis(),
        lease.terms().governs(),
        lease.taps(),
        said.taps(),
        lease.terms().ratePerTap(),
        lease.terms().price(),
        said.owed(),
        said.owedVolume(),
        said.carriedIn(),
        said.delivered(),
        said.deliveredValue(),
        said.deliveredVolume(),
        said.carried(),
        said.carriedVolume(),
        said.deliveredListValue(),
        lease.closedOn());
  }
}
