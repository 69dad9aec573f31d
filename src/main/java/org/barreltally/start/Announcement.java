package org.barreltally.start;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;

/**
 * What is said on the terminal once pages and interface answer: where to look, and where the data
 * lies.
 *
 * @param port the port of the pages
 * @param https the port of the same over HTTPS; 0 for none
 * @param said what there is to say about HTTPS; empty for nothing
 * @param books the names of several books; empty for one
 * @param data the data folder or the outside database's address
 */
record Announcement(int port, int https, Optional<String> said, List<String> books, String data) {

  private static final int NETWORK_ADDRESSES_MAX = 4;

  /** Prints it. */
  void print(PrintStream out) {
    out.println("Barreltally is ready: http://localhost:" + port + "/");
    for (String address : networkAddresses()) {
      out.println("  from phones in the same network: http://" + address + ":" + port + "/");
    }
    if (https != 0) {
      out.println(
          "  over HTTPS, for show tables: port " + https + "; phones begin at /phones/trust");
    }
    said.ifPresent(sentence -> out.println("  " + sentence));
    if (!books.isEmpty()) {
      out.println(
          "  the books of "
              + String.join(", ", books)
              + ", each under a host name that begins with its name");
    }
    out.println("  the data lies in " + data);
    out.flush();
  }

  private static List<String> networkAddresses() {
    return MachineNames.addresses().stream().limit(NETWORK_ADDRESSES_MAX).toList();
  }
}
