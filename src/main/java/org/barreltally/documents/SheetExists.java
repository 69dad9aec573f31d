package org.barreltally.documents;

import org.barreltally.refusal.Refusal;

/** A label sheet of that code is known already; a sheet never changes. */
public final class SheetExists extends Refusal {
  SheetExists(String code) {
    super(
        Kind.CONFLICT,
        "label-sheet-exists",
        "This sheet is known already",
        "There is a label sheet " + code + ". It keeps its lengths; choose another code.",
        "code");
  }
}
