package org.barreltally.web;

import java.util.Optional;

/** Something to see to, said at the head of the start page. Capabilities give it. */
public interface StartPageNotice {

  /** One or two plain sentences; empty while there is nothing to see to. */
  Optional<String> sentence();
}
