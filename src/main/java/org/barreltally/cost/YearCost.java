package org.barreltally.cost;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.UUID;
import org.barreltally.pricing.Money;

/**
 * What goods cost in a year of the book: opening + added = gone + closing, to the cent.
 *
 * @param rows by what is valued together
 * @param late costs of goods that came in earlier years; the year bears them whole
 * @param waiting costs whose goods have not come yet; they are in no sum
 * @param note who decides
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record YearCost(
    int year,
    CostMethod method,
    Totals totals,
    List<Row> rows,
    List<Told> late,
    List<Told> waiting,
    String note) {

  public static final String NOTE =
      "This sheet helps your records. Your tax preparer decides which method is for you and what counts as a cost.";

  /**
   * @param methodChange opening less what the year before closed with, where its method was another
   * @param opening by the method of this year
   * @param boiled costs of seasons and lots that the syrup boiled in the year bears
   * @param openedBook of stock that was there when the book began
   * @param runs costs of canning runs
   * @param containers jars, caps, labels, cartons of what was packed
   * @param late see {@link YearCost#late}
   * @param gone all of it, late costs included
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Totals(
      Money methodChange,
      Money opening,
      Money boiled,
      Money bought,
      Money openedBook,
      Money runs,
      Money containers,
      Money late,
      Money gone,
      List<Gone> goneTo,
      Money closing) {}

  /**
   * What is valued together: opening + boiled + bought + openedBook + made = used + gone + closing.
   *
   * @param lot null unless each lot is valued by itself, and for jars whose lot nobody wrote down
   * @param container null for syrup in bulk
   * @param made came of a run or a top-up
   * @param used went into one
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Row(
      String lot,
      String container,
      String grade,
      Amount opening,
      Amount boiled,
      Amount bought,
      Amount openedBook,
      Amount made,
      Amount used,
      List<Gone> gone,
      Amount closing) {}

  /**
   * What went somewhere, less what came back from there.
   *
   * @param account the outside account, for example {@code customer}
   * @param amount null in totals
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Gone(String account, Amount amount, Money cost) {}

  /** A cost named. */
  public record Told(UUID cost, String belongsTo, String name, Money amount) {}
}
