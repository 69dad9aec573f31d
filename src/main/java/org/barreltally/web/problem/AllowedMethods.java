package org.barreltally.web.problem;

import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.mapping.RuntimeResource;
import org.jboss.resteasy.reactive.server.util.RuntimeResourceVisitor;

/**
 * The methods that the address of the request at hand does take. An answer of 405 must list them
 * (RFC 9110, section 15.5.6), and the framework does not.
 */
final class AllowedMethods {

  private static final Pattern PARAMETER = Pattern.compile("\\{[^}]*}");

  private AllowedMethods() {}

  /** For example {@code GET, POST}. */
  static String here() {
    ResteasyReactiveRequestContext request = CurrentRequestManager.get();
    String path = withoutEndSlash(request.getPath());
    TreeSet<String> methods = new TreeSet<>();
    RuntimeResourceVisitor.visitRuntimeResources(
        "",
        request.getDeployment().getClassMappers(),
        new RuntimeResourceVisitor() {
          @Override
          public void visitRuntimeResource(String method, String template, RuntimeResource found) {
            if (fits(withoutEndSlash(template), path)) {
              methods.add(method);
            }
          }
        });
    return String.join(", ", methods);
  }

  /** Whether a path is of the form of a template such as {@code /api/tokens/{id}}. */
  static boolean fits(String template, String path) {
    String[] asked = path.split("/", -1);
    String[] known = template.split("/", -1);
    if (asked.length != known.length) {
      return false;
    }
    for (int i = 0; i < known.length; i++) {
      if (!known[i].equals(asked[i]) && !PARAMETER.matcher(known[i]).find()) {
        return false;
      }
    }
    return true;
  }

  private static String withoutEndSlash(String path) {
    return path.length() > 1 && path.endsWith("/") ? path.substring(0, path.length() - 1) : path;
  }
}
