package org.barreltally.web.problem;

import jakarta.ws.rs.ext.Provider;
import jakarta.ws.rs.ext.ReaderInterceptor;
import jakarta.ws.rs.ext.ReaderInterceptorContext;
import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.barreltally.web.MayBeEmpty;

/**
 * Refuses a body that is missing, unless nothing in it is needed, and one that grows past the limit
 * without having said so before.
 */
@Provider
public class BodyReading implements ReaderInterceptor {

  @Override
  public Object aroundReadFrom(ReaderInterceptorContext context) throws IOException {
    PushbackInputStream said = new PushbackInputStream(context.getInputStream());
    int first = said.read();
    if (first >= 0) {
      said.unread(first);
    }
    context.setInputStream(first < 0 && mayBeEmpty(context) ? nothing() : new Counted(said));
    Object body = context.proceed();
    if (body == null) {
      throw new Refused(
          new Problem(
              400,
              "body-missing",
              "The body is missing",
              "This address needs a JSON body; send at least {}. Its fields are described at"
                  + " /openapi."));
    }
    return body;
  }

  private static boolean mayBeEmpty(ReaderInterceptorContext context) {
    return Stream.of(context.getAnnotations()).anyMatch(MayBeEmpty.class::isInstance);
  }

  private static InputStream nothing() {
    return new ByteArrayInputStream("{}".getBytes(StandardCharsets.UTF_8));
  }

  private static final class Counted extends FilterInputStream {

    private long read;

    Counted(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int one = super.read();
      count(one < 0 ? 0 : 1);
      return one;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
      int some = super.read(bytes, from, length);
      count(Math.max(0, some));
      return some;
    }

    private void count(int more) {
      read += more;
      if (read > RequestLimits.BODY_BYTES_MAX) {
        throw new Refused(HttpProblems.of(413));
      }
    }
  }
}
