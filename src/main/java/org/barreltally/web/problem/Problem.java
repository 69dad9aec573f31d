package org.barreltally.web.problem;

import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.barreltally.refusal.Refusal.FieldError;

/**
 * A no as the person sees it, whoever said it.
 *
 * @param status HTTP status
 * @param code stable name in kebab-case
 * @param headers further response headers
 */
public record Problem(
    int status,
    String code,
    String title,
    String detail,
    List<FieldError> errors,
    Map<String, String> headers) {

  /** The media type of {@link Document}. */
  public static final String MEDIA_TYPE = "application/problem+json";

  /** The document of RFC 9457, with the extension members {@code code} and {@code errors}. */
  public record Document(
      URI type, String title, int status, String detail, String code, List<FieldError> errors) {}

  public Problem(int status, String code, String title, String detail) {
    this(status, code, title, detail, List.of(), Map.of());
  }

  /** A problem with one field of the request. */
  public static Problem ofField(String code, String title, String field, String message) {
    return new Problem(
        400, code, title, message, List.of(new FieldError(field, message)), Map.of());
  }

  /** The same problem with one more response header. */
  public Problem with(String header, String value) {
    Map<String, String> more = new TreeMap<>(headers);
    more.put(header, value);
    return new Problem(status, code, title, detail, errors, more);
  }

  /** The same problem, asking the client to wait this long, at least a second. */
  public Problem retryAfter(long seconds) {
    return with("Retry-After", Long.toString(Math.max(1, seconds)));
  }

  Document document() {
    return new Document(
        URI.create("urn:barreltally:problem:" + code),
        title,
        status,
        detail,
        code,
        errors.isEmpty() ? null : errors);
  }
}
