package org.barreltally.gifts;

/**
 * Who a recipient is; kept where it can be removed, so each may be null.
 *
 * @param card text of the greeting card
 */
public record Person(String name, Address address, String card) {

  /** Somebody whose particulars were removed. */
  public static final Person FORGOTTEN = new Person(null, null, null);
}
