package org.barreltally.documents;

import java.util.List;
import org.barreltally.refusal.InvalidField;

/**
 * Who stands on a paper, as the owner had set it when it was printed.
 *
 * @param address line by line
 * @param bestByMonths after packing; null where labels carry no best-by date
 * @param publicAddress where a buyer finds a lot, beginning with http; null where there is none
 * @param labelSheet used where a request names none; null for the usual one
 */
public record Maker(
    String name,
    List<String> address,
    Integer bestByMonths,
    String publicAddress,
    String labelSheet) {

  public Maker {
    address = List.copyOf(address);
  }

  private static final int ADDRESS_LINES_MAX = 8;

  /**
   * The address as it is printed.
   *
   * @throws InvalidField if it has more than 8 lines
   */
  List<String> printedAddress() {
    if (address.size() > ADDRESS_LINES_MAX) {
      throw new InvalidField(
          "address",
          "The address has "
              + address.size()
              + " lines; papers take at most "
              + ADDRESS_LINES_MAX
              + ".");
    }
    return address;
  }

  /** What the QR code of a lot says: where a buyer finds it, or only its code. */
  String lotAddress(String lot) {
    return publicAddress == null ? lot : publicAddress.replaceAll("/+$", "") + "/lot/" + lot;
  }
}
