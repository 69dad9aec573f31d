package org.barreltally.sugarbush;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.sugarbush.internal.LandownerRows;

/** On whose land trees are tapped; names and addresses can be changed and removed. */
@ApplicationScoped
public class Landowners {

  private static final int ADDRESS_MAX = 500;

  private final LandownerRows rows;

  Landowners(LandownerRows rows) {
    this.rows = rows;
  }

  /** By name, after a name (or null), at most so many. */
  @Transactional
  public List<Landowner> list(String after, int limit) {
    return rows.list(after, limit);
  }

  /**
   * Changes how a landowner is named and where to write to.
   *
   * @param address null for none
   * @throws UnknownLandowner if there is none of that id
   * @throws InvalidField if the name is missing, too long or taken
   */
  @Transactional
  public Landowner change(UUID id, String name, String address) {
    if (address != null && address.length() > ADDRESS_MAX) {
      throw new InvalidField("address", "Keep it within 500 characters.");
    }
    String stripped = LeaseRules.name(name, "name", "the landowner's name");
    if (rows.find(id).isEmpty()) {
      throw new UnknownLandowner(id);
    }
    if (rows.named(stripped).filter(other -> !other.id().equals(id)).isPresent()) {
      throw new InvalidField("name", "Another landowner has that name. Tell them apart.");
    }
    rows.change(id, stripped, address == null || address.isBlank() ? null : address.strip());
    return rows.find(id).orElseThrow();
  }
}
