package org.barreltally.settings;

/** Asked before the owner's label sheet is set, by whoever keeps the sheets. */
public interface LabelSheetRule {

  /**
   * @param code of the sheet, as it was said
   * @param field that named it
   * @throws org.barreltally.refusal.Refusal naming the field if nobody added such a sheet
   */
  void requireKnown(String code, String field);
}
