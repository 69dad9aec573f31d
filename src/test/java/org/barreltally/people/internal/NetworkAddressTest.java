package org.barreltally.people.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Addresses are those set aside for documentation (RFC 5737, RFC 3849). */
class NetworkAddressTest {

  @ParameterizedTest
  @CsvSource(
      nullValues = "none",
      value = {
        "192.0.2.17, 192.0.2.17",
        "::ffff:192.0.2.17, 192.0.2.17",
        "2001:db8:1:2:3:4:5:6, 2001:db8:1:2::",
        "2001:db8:1:2::6, 2001:db8:1:2::",
        "2001:db8::6, 2001:db8:0:0::",
        "2001:db8:1:2:3:4:5:6%eth0, 2001:db8:1:2::",
        "::1, 0:0:0:0::",
        "none, unknown",
      })
  void a_household_is_one(String address, String household) {
    assertEquals(household, NetworkAddress.household(address));
  }
}
