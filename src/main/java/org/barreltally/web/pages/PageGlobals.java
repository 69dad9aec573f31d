package org.barreltally.web.pages;

import io.quarkus.arc.Arc;
import io.quarkus.qute.TemplateGlobal;
import org.barreltally.people.CurrentUser;

/** What the layout of every page may ask for without being handed it. */
@TemplateGlobal
class PageGlobals {

  private PageGlobals() {}

  /** The display name of who is signed in, or null on pages that are seen before signing in. */
  static String signedInAs() {
    if (!Arc.container().requestContext().isActive()) {
      return null;
    }
    CurrentUser user = Arc.container().instance(CurrentUser.class).get();
    return user.isSignedIn() ? user.displayName() : null;
  }
}
