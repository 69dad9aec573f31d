package org.barreltally.people.internal;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Where an attempt came from, as coarse as one household is. */
public final class NetworkAddress {

  private static final int HOUSEHOLD_GROUPS = 4;

  private NetworkAddress() {}

  /**
   * An address without the network card that it came by, which some have behind a percent sign (RFC
   * 4007, 11).
   *
   * @param address may be null, as the answer is then
   */
  static String alone(String address) {
    return address == null ? null : address.replaceFirst("%.*", "");
  }

  /**
   * An IPv4 address as it is; of an IPv6 address the first 64 bits, since a household has all the
   * others to itself (RFC 6177).
   *
   * @param address as the server wrote it, without brackets; null where it is not known
   */
  public static String household(String address) {
    if (address == null) {
      return "unknown";
    }
    String plain = alone(address);
    if (!plain.contains(":") || plain.contains(".")) {
      return plain.replaceFirst(".*:", "");
    }
    String[] halves = plain.split("::", 2);
    int left = groups(halves[0]);
    int right = halves.length < 2 ? 0 : groups(halves[1]);
    String full =
        halves.length < 2 ? plain : halves[0] + ":" + "0:".repeat(8 - left - right) + halves[1];
    return Arrays.stream(full.split(":"))
            .filter(group -> !group.isEmpty())
            .limit(HOUSEHOLD_GROUPS)
            .collect(Collectors.joining(":"))
        + "::";
  }

  private static int groups(String part) {
    return part.isEmpty() ? 0 : part.split(":").length;
  }
}
