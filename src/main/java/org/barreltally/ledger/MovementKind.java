package org.barreltally.ledger;

import java.util.Locale;

/** Why stock moved; stands in the book as its {@link #code()}. */
public enum MovementKind {
  /** Stock that was there when the book began. */
  OPENING,
  /** Syrup bought from a supplier. */
  PURCHASE,
  /** A barrel filled from the evaporator. */
  FILLING,
  /** A barrel topped up: its lot and the fresh syrup become a blend lot. */
  TOP_UP,
  /** A barrel weighed again: the book follows the scale. */
  WEIGHING,
  /** Bulk syrup turned into jars. */
  CANNING,
  /** A barrel sold whole to a bulk buyer. */
  BULK_SALE,
  /** Jars carried from one own place to another. */
  RELOCATION,
  /** Jars or syrup gone for a named cause. */
  WRITE_OFF,
  /** The shelf was counted and the book follows. */
  COUNT,
  /** Jars packed out to a show table. */
  PACK_OUT,
  /** Jars carried from one show table to another. */
  TABLE_TRANSFER,
  /** Jars home from a show table. */
  BACK,
  /** Jars sold: at a show table, at the farm gate, by post or wholesale. */
  SALE,
  /** Sold jars that came back from a buyer. */
  SALE_RETURN,
  /** A show table counted up: what the sales left open falls to its lots. */
  SETTLEMENT,
  /** Jars of a gift order sent on their way. */
  GIFT,
  /** Jars of a gift order that came back. */
  GIFT_RETURN,
  /** Jars handed to a landowner as rent. */
  LANDOWNER_SHARE,
  /** Jars brought to a shop that sells them for the maker. */
  CONSIGNMENT,
  /** A shop's shelf counted: what is gone is sold or missing. */
  SHELF_COUNT,
  /** Takes an earlier movement back. */
  REVERSAL;

  /** Whether a movement of this kind can be taken back while it stands. */
  public boolean canBeTakenBack() {
    return this != REVERSAL && this != TOP_UP;
  }

  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static MovementKind of(String code) {
    return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
