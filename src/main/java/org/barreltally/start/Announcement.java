package org.barreltally.start;

import java.io.PrintStream;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.List;

/**
 * What is said on the terminal once pages and interface answer: where to look, and where the data
 * lies.
 *
 * @param port the port of the pages
 * @param data the data folder or the outside database's address
 */
record Announcement(int port, String data) {

  private static final int NETWORK_ADDRESSES_MAX = 4;

  /** Prints it. */
  void print(PrintStream out) {
    out.println("Barreltally is ready: http://localhost:" + port + "/");
    for (String address : networkAddresses()) {
      out.println("  from phones in the same network: http://" + address + ":" + port + "/");
    }
    out.println("  the data lies in " + data);
    out.flush();
  }

  /** Private IPv4 addresses (RFC 1918) of this machine; none if the system does not tell. */
  private static List<String> networkAddresses() {
    try {
      return NetworkInterface.networkInterfaces()
          .flatMap(NetworkInterface::inetAddresses)
          .filter(a -> a instanceof Inet4Address && a.isSiteLocalAddress())
          .map(InetAddress::getHostAddress)
          .limit(NETWORK_ADDRESSES_MAX)
          .toList();
    } catch (SocketException e) {
      return List.of();
    }
  }
}
