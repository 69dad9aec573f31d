package org.barreltally.documents;

import java.time.Instant;
import java.util.List;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.MakerSettings;
import org.barreltally.settings.UnitHabit;

/**
 * Who stands on a paper, as the owner had set it when it was printed.
 *
 * @param address line by line
 * @param bestByMonths after packing; null where labels carry no best-by date
 * @param publicAddress where a buyer finds a lot, beginning with http; null where there is none
 * @param labelSheet used where a request names none; null for the usual one
 * @param habit whose units stand first
 */
public record Maker(
    String name,
    List<String> address,
    Integer bestByMonths,
    String publicAddress,
    String labelSheet,
    UnitHabit habit) {

  public Maker {
    address = List.copyOf(address);
  }

  /** The maker as it was set at an instant, so that a paper printed again says what it said. */
  public static Maker at(Instant printed, FarmSettings settings) {
    MakerSettings said = settings.at(printed).said();
    return new Maker(
        said.maker(),
        said.address(),
        said.bestByMonths(),
        said.publicAddress(),
        said.labelSheet(),
        said.unitHabit());
  }

  /** What the QR code of a lot says: where a buyer finds it, or only its code. */
  String lotAddress(String lot) {
    return publicAddress == null ? lot : publicAddress.replaceAll("/+$", "") + "/lot/" + lot;
  }
}
