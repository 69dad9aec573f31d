package org.barreltally.start;

import io.quarkus.smallrye.openapi.runtime.OpenApiConstants;
import java.io.InputStream;
import org.barreltally.web.WrittenDescription;

/**
 * Hides the written description of the interface from Quarkus, which takes a fifth of a start to
 * read it and to write it anew; {@link WrittenDescription} gives it out as it is.
 */
final class UnreadDescription extends ClassLoader {

  private UnreadDescription(ClassLoader classes) {
    super(classes);
  }

  /** Call before the application starts. */
  static void hide() {
    OpenApiConstants.classLoader = new UnreadDescription(UnreadDescription.class.getClassLoader());
  }

  @Override
  public InputStream getResourceAsStream(String name) {
    return name.startsWith(WrittenDescription.FILE) ? null : super.getResourceAsStream(name);
  }
}
