package org.barreltally.documents.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.List;
import org.barreltally.documents.LabelSheets;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.SheetChoices;

/** The sheets that are known and those of the owner. */
@ApplicationScoped
class SheetsOfPages implements SheetChoices {

  private static final int SHOWN_MAX = 200;

  private final LabelSheets sheets;

  @Inject
  SheetsOfPages(LabelSheets sheets) {
    this.sheets = sheets;
  }

  @Override
  public List<Choice> choices() {
    return sheets.list(null, SHOWN_MAX).stream()
        .map(sheet -> new Choice(sheet.code(), sheet.name()))
        .toList();
  }
}
