package org.barreltally.documents;

import java.util.List;
import java.util.stream.Collectors;
import org.barreltally.refusal.Refusal;

/** The labels of a sheet reach over the edge of its paper. */
public final class SheetDoesNotFitPaper extends Refusal {
  SheetDoesNotFitPaper(List<FieldError> errors) {
    super(
        Kind.RULE,
        "sheet-does-not-fit-paper",
        "The labels reach over the paper",
        errors.stream().map(FieldError::message).collect(Collectors.joining(" ")),
        errors);
  }
}
