package org.barreltally.ledger;

/** The codes of the places that every book has from the start (see the ledger's migration). */
public final class PlaceCode {
  public static final String BARREL_ROOM = "barrel-room";
  public static final String COOL_ROOM = "cool-room";
  public static final String OPENING = "opening";
  public static final String BOILED = "boiled";
  public static final String BOUGHT = "bought";
  public static final String WATER = "water";
  public static final String CUSTOMER = "customer";
  public static final String LANDOWNER = "landowner";
  public static final String GIVEN = "given";
  public static final String SAMPLED = "sampled";
  public static final String DISCARDED = "discarded";
  public static final String BULK_BUYER = "bulk-buyer";
  public static final String BROKEN = "broken";
  public static final String FILTER = "filter";
  public static final String OVERFILL = "overfill";
  public static final String UNEXPLAINED = "unexplained";
  public static final String BLENDING = "blending";
  public static final String PACKING = "packing";

  private PlaceCode() {}
}
