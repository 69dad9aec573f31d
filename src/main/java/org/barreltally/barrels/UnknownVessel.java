package org.barreltally.barrels;

import org.barreltally.refusal.Refusal;

/** A tag is named that no vessel has, or that was never filled. */
public final class UnknownVessel extends Refusal {

  /** The address names the tag. */
  public UnknownVessel(String tag) {
    super(Kind.NOT_FOUND, "unknown-barrel", "No such barrel", detail(tag));
  }

  /** A field of the request names the tag. */
  public UnknownVessel(String tag, String field) {
    super(Kind.INVALID, "unknown-barrel", "No such barrel", detail(tag), field);
  }

  private static String detail(String tag) {
    return "No vessel with the tag “" + shown(tag) + "” was filled. List barrels at /api/barrels.";
  }
}
