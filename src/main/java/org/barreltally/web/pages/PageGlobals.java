package org.barreltally.web.pages;

import io.quarkus.arc.Arc;
import io.quarkus.qute.TemplateGlobal;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.HttpServerRequest;
import java.util.List;
import org.barreltally.people.CurrentUser;
import org.barreltally.people.Role;
import org.barreltally.web.access.FormToken;
import org.barreltally.web.access.RoleRules;

/** What the layout of every page may ask for without being handed it. */
@TemplateGlobal
class PageGlobals {

  private PageGlobals() {}

  /** The display name of who is signed in, or null on pages that are seen before signing in. */
  static String signedInAs() {
    CurrentUser user = user();
    return user == null ? null : user.displayName();
  }

  /** Whether who is signed in may change what this page is about. */
  static boolean mayWrite() {
    CurrentUser user = user();
    return user != null && RoleRules.mayChange(Role.of(user.role()), here());
  }

  /** Whether the owner is signed in. */
  static boolean isOwner() {
    CurrentUser user = user();
    return user != null && user.role().equals("owner");
  }

  /** The role of who is signed in; empty before. */
  static String signedInRole() {
    CurrentUser user = user();
    return user == null ? "" : user.role();
  }

  /** The token that every form of this session carries. */
  static String formToken() {
    return atWork() ? Arc.container().instance(FormToken.class).get().text() : "";
  }

  static List<Menu.Part> menu() {
    return Arc.container() == null ? List.of() : Arc.container().instance(Menu.class).get().parts();
  }

  /** The path of the page that is being written. */
  static String here() {
    return atWork() ? Arc.container().instance(HttpServerRequest.class).get().path() : "";
  }

  /** {@code en, fr}. */
  static String language() {
    return Viewer.languageNow().code();
  }

  /** {@code us, metric}. */
  static String units() {
    return Viewer.unitsNow().code();
  }

  private static CurrentUser user() {
    if (!atWork()) {
      return null;
    }
    CurrentUser user = Arc.container().instance(CurrentUser.class).get();
    return user.isSignedIn() ? user : null;
  }

  private static boolean atWork() {
    return Arc.container() != null
        && Arc.container().requestContext().isActive()
        && Arc.container().instance(CurrentVertxRequest.class).get().getCurrent() != null;
  }
}
