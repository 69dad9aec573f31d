package org.barreltally.documents;

import java.time.Instant;

/** Who stands on papers. */
public interface MakerOnPapers {

  /** The maker as it was set at an instant, so that a paper printed again says what it said. */
  Maker at(Instant printed);
}
