package org.barreltally.barrels.rest;

import jakarta.validation.Valid;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.barreltally.barrels.Density;
import org.barreltally.barrels.Dipstick;
import org.barreltally.barrels.Emptying;
import org.barreltally.barrels.FillBarrel;
import org.barreltally.barrels.Material;
import org.barreltally.barrels.Weighing;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;
import org.barreltally.web.Because;

/** What is sent to change barrels; numbers and units are judged by the domain. */
public final class BarrelRequests {

  private BarrelRequests() {}

  public record Reweigh(
      LocalDate on, @NotNull(message = "Give gross, and tare if it changed.") Weighing weighing) {}

  public record Regrade(
      LocalDate on,
      Double transmittance,
      Taste taste,
      @Size(max = Because.REASON_MAX, message = Because.MEND) String reason) {}

  public record Wash(LocalDate on, @Valid Because discard) {}

  public record WriteOff(
      LocalDate on,
      Quantity weight,
      Boolean all,
      @NotNull(message = "Give the cause: discarded or sampled.") Emptying.Cause cause,
      @NotBlank(message = Because.MEND) @Size(max = Because.REASON_MAX, message = Because.MEND)
          String reason) {}

  public record Supplier(
      @NotBlank(message = "Name the supplier, in at most 100 characters.")
          @Size(max = 100, message = "Name the supplier, in at most 100 characters.")
          String name,
      @Size(max = Because.REASON_MAX, message = "Keep it within 500 characters.") String details) {}

  public record Purchase(
      @NotNull(message = "Say who sold it.") @Valid Supplier supplier,
      LocalDate on,
      String tag,
      Integer season,
      Material material,
      Quantity capacity,
      Weighing weighing,
      Dipstick dipstick,
      Density density,
      Double transmittance,
      Taste taste) {

    FillBarrel asFilling() {
      return new FillBarrel(
          tag, season, on, material, capacity, weighing, dipstick, density, transmittance, taste);
    }
  }
}
