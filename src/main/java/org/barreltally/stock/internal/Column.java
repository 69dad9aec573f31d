package org.barreltally.stock.internal;

import java.util.Arrays;
import java.util.List;

/** The columns of an opening stock file, and which kind of row fills them. */
public enum Column {
  KIND("kind", true, true),
  TAG("tag", true, false),
  LOT("lot", true, true),
  SEASON("season", true, true),
  FILLED_ON("filledOn", true, false),
  MATERIAL("material", true, false),
  CAPACITY("capacity", true, false),
  GROSS("gross", true, false),
  TARE("tare", true, false),
  DIP("dip", true, false),
  DIP_AT("dipAt", true, false),
  BRIX("brix", true, true),
  BRIX_AT("brixAt", true, true),
  INSTRUMENT("instrument", true, true),
  REFERENCE("reference", true, true),
  TRANSMITTANCE("transmittance", true, true),
  TASTE("taste", true, true),
  PLACE("place", false, true),
  CONTAINER("container", false, true),
  COUNT("count", false, true),
  PACKED_ON("packedOn", false, true);

  private final String label;
  private final boolean ofBarrel;
  private final boolean ofJars;

  Column(String label, boolean ofBarrel, boolean ofJars) {
    this.label = label;
    this.ofBarrel = ofBarrel;
    this.ofJars = ofJars;
  }

  /** As it stands in the header. */
  public String label() {
    return label;
  }

  boolean belongsTo(boolean barrel) {
    return barrel ? ofBarrel : ofJars;
  }

  static List<String> names() {
    return Arrays.stream(values()).map(Column::label).toList();
  }
}
