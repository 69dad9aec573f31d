package org.barreltally.shops;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;

/**
 * A shop is made known, with its first terms.
 *
 * @param code null to have it made from the name
 * @param details address and whom to ask; may be null
 * @param since the first day of the terms; null for today
 * @param commissionPercent what the shop keeps of each price; null where it keeps nothing, until
 *     other terms are agreed
 */
public record OpenShop(
    @Pattern(
            regexp = "[a-z0-9][a-z0-9-]{0,33}",
            message = "Give up to 34 small letters, digits and hyphens, or leave it out.")
        String code,
    @NotBlank(message = "Give the shop's name.")
        @Size(max = 80, message = "Keep the name within 80 characters.")
        String name,
    @Size(max = 500, message = "Keep it within 500 characters.") String details,
    LocalDate since,
    BigDecimal commissionPercent,
    MissingRule missing,
    BigDecimal shopBearsPercent,
    UUID priceList) {

  AgreeTerms terms() {
    BigDecimal commission = commissionPercent == null ? BigDecimal.ZERO : commissionPercent;
    return new AgreeTerms(since, commission, missing, shopBearsPercent, priceList);
  }
}
