package org.barreltally.start;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;

/** Under which names and addresses this machine may be reached. */
final class MachineNames {

  private MachineNames() {}

  /**
   * Names for a certificate: {@code localhost}, the machine's name, the same with {@code .local}
   * (RFC 6762), its private IPv4 addresses (RFC 1918), and what the owner named.
   */
  static SortedSet<String> all(List<String> named) {
    SortedSet<String> names = new TreeSet<>(List.of("localhost", "127.0.0.1"));
    named.forEach(name -> names.add(name.toLowerCase(Locale.ROOT)));
    String host = host();
    if (host != null) {
      names.add(host);
      if (!host.contains(".")) {
        names.add(host + ".local");
      }
    }
    names.addAll(addresses());
    return names;
  }

  /** Private IPv4 addresses of this machine; none if the system does not tell. */
  static List<String> addresses() {
    try {
      return NetworkInterface.networkInterfaces()
          .flatMap(NetworkInterface::inetAddresses)
          .filter(a -> a instanceof Inet4Address && a.isSiteLocalAddress())
          .map(InetAddress::getHostAddress)
          .distinct()
          .toList();
    } catch (SocketException e) {
      return List.of();
    }
  }

  static boolean isAddress(String name) {
    return name.matches("[0-9]{1,3}(\\.[0-9]{1,3}){3}");
  }

  private static String host() {
    try {
      String host = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
      return host.matches("[a-z0-9]([a-z0-9-]*[a-z0-9])?(\\.[a-z0-9-]+)*") && !isAddress(host)
          ? host
          : null;
    } catch (UnknownHostException e) {
      return null;
    }
  }
}
