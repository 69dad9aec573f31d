package org.barreltally.shows;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;

/**
 * All that is booked for a show. Only name, town and the days are always there.
 *
 * @param setUp when the table is built up; on or before the first day
 * @param appliedOn the day the application was sent
 * @param tableKit the name of the set of canopy, cloths and stands; one set is at one show at a
 *     time
 * @param kitItems what belongs to the kit or is brought with it, for the packing list
 * @param helper who stands at the table
 * @param vehicleLoad the most the vehicle should carry
 * @param priceList the price list that lies on the table
 * @param papers permits and insurance papers to bring
 * @param cashFloat change money to bring
 * @param rainPlan what is done in bad weather
 * @param visitorsExpected people over all days
 * @param hoursOpen hours over all days in which the table sells
 * @param travelCost of the vehicle, there and back
 * @param helperPay for all hours
 */
public record Booking(
    String name,
    String town,
    LocalDate starts,
    LocalDate ends,
    DayOrTime setUp,
    Organiser organiser,
    LocalDate appliedOn,
    Deadlines deadlines,
    Booth booth,
    String tableKit,
    List<String> kitItems,
    String helper,
    String vehicle,
    Quantity vehicleLoad,
    UUID priceList,
    List<String> papers,
    @JsonProperty("float") Money cashFloat,
    String rainPlan,
    Integer visitorsExpected,
    BigDecimal hoursOpen,
    Money travelCost,
    Money helperPay,
    String notes) {

  /** Who runs the show, and how to reach them. */
  public record Organiser(String name, String contact) {}

  /**
   * By when something is due.
   *
   * @param apply the application
   * @param pay the fee
   */
  public record Deadlines(DayOrTime apply, DayOrTime pay) {}
}
