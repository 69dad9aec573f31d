package org.barreltally.hostile;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** A form as a browser sends it, in one line or in parts (RFC 7578). */
final class Sent {

  private static final String EDGE = "the-edge-of-a-part";

  private final boolean parts;
  private final StringBuilder text = new StringBuilder();

  Sent(boolean parts) {
    this.parts = parts;
  }

  String type() {
    return parts ? "multipart/form-data; boundary=" + EDGE : "application/x-www-form-urlencoded";
  }

  void add(boolean file, String name, String value) {
    if (parts) {
      String quoted = name.replaceAll("[\"\\r\\n]", "_");
      text.append("--%s\r\nContent-Disposition: form-data; name=\"%s\"".formatted(EDGE, quoted))
          .append(file ? "; filename=\"list.csv\"\r\nContent-Type: text/csv" : "")
          .append("\r\n\r\n")
          .append(value)
          .append("\r\n");
    } else {
      text.append(text.isEmpty() ? "" : "&")
          .append(URLEncoder.encode(name, StandardCharsets.UTF_8))
          .append('=')
          .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
  }

  /** What is sent. */
  @Override
  public String toString() {
    return parts ? text + "--" + EDGE + "--\r\n" : text.toString();
  }
}
