package org.barreltally.start;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** The port of the web pages and the REST interface. */
final class HttpPort {

  private HttpPort() {}

  /**
   * Looks whether the port is free, before anything else is started.
   *
   * @throws CannotStart when another program has it or the system keeps it back
   */
  static void mustBeFree(int port) {
    mustBeFree(port, "PORT");
  }

  /** As {@link #mustBeFree(int)}, for the port that another variable names. */
  static void mustBeFree(int port, String variable) {
    try (ServerSocket socket = new ServerSocket()) {
      socket.bind(new InetSocketAddress(port));
    } catch (IOException e) {
      throw taken(port, variable, e);
    }
  }

  /** What to say when the port cannot be had. */
  static CannotStart taken(int port, Throwable cause) {
    return taken(port, "PORT", cause);
  }

  private static CannotStart taken(int port, String variable, Throwable cause) {
    String message = String.valueOf(cause.getMessage());
    return new CannotStart(
        message.contains("ermission")
            ? "This user may not open port %d; choose one above 1023 with %s."
                .formatted(port, variable)
            : "Port %d is taken by another program; stop that one or choose another port with %s."
                .formatted(port, variable),
        cause);
  }
}
