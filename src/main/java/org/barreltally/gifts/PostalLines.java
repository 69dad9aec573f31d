package org.barreltally.gifts;

import java.util.List;

/** An address as it stands on a parcel, in the order of its country. */
public final class PostalLines {

  private PostalLines() {}

  /**
   * The lines from the top: name, address, and the country in capitals where it is another than the
   * sender's.
   *
   * @param home two letters of the sender's country
   */
  public static List<String> of(String name, Address address, String home) {
    return AddressForm.of(address.country()).lines(name, address, home);
  }
}
