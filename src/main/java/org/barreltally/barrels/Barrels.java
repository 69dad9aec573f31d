package org.barreltally.barrels;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.barreltally.barrels.internal.BarrelQuery;
import org.barreltally.measure.ColorClass;

/** Barrels and heel vessels as they stand: the newest filling of each tag. */
@ApplicationScoped
public class Barrels {

  /** Which barrels to list; a null lets all through. */
  public record Filter(ColorClass grade, BarrelState state, Integer season) {}

  private final BarrelQuery query;

  public Barrels(BarrelQuery query) {
    this.query = query;
  }

  /**
   * The newest filling of a tag.
   *
   * @throws UnknownVessel if no vessel of that tag was ever filled
   */
  @Transactional
  public Barrel at(String tag) {
    return query.read("v.tag = ?", 1, tag).stream()
        .findFirst()
        .orElseThrow(() -> new UnknownVessel(tag));
  }

  /**
   * The newest filling of a tag that a field names.
   *
   * @throws UnknownVessel naming the field
   */
  @Transactional
  public Barrel named(String tag, String field) {
    return query.read("v.tag = ?", 1, tag).stream()
        .findFirst()
        .orElseThrow(() -> new UnknownVessel(tag, field));
  }

  /**
   * Makes sure that a barrel is as its writer read it, and keeps it so until the transaction ends.
   *
   * @param versions as {@link Barrel#version} gave them, one of which is right; null when the
   *     writer does not mind
   * @throws ChangedSince if it changed since
   */
  @Transactional
  public void unchanged(String tag, Set<String> versions) {
    if (query.lock(List.of(tag)).isEmpty()) {
      throw new UnknownVessel(tag);
    }
    if (versions != null && !versions.contains(at(tag).version())) {
      throw new ChangedSince(tag);
    }
  }

  /** Vessels that keep heels, by tag, after a tag, at most so many. */
  @Transactional
  public List<Barrel> heels(String after, int limit) {
    return query.read("v.kind = 'heel' AND v.tag > ?", limit, after == null ? "" : after);
  }

  /** Barrels (not heel vessels) by tag, after a tag, at most so many. */
  @Transactional
  public List<Barrel> list(Filter filter, String after, int limit) {
    StringBuilder condition = new StringBuilder("v.kind = 'barrel' AND v.tag > ?");
    List<Object> values = new ArrayList<>();
    values.add(after == null ? "" : after);
    if (filter.grade() != null) {
      condition.append(" AND l.grade = ?");
      values.add(filter.grade().code());
    }
    if (filter.state() != null) {
      condition.append(" AND f.state = ?");
      values.add(filter.state().code());
    }
    if (filter.season() != null) {
      condition.append(" AND f.season = ?");
      values.add(filter.season());
    }
    return query.read(condition.toString(), limit, values.toArray());
  }

  /** Every vessel with syrup in it, heel vessels included, by tag. */
  @Transactional
  public List<Barrel> withSyrup() {
    return query.read("b.amount > 0", Integer.MAX_VALUE);
  }

  /** Those of them whose syrup is of a lot. */
  @Transactional
  public List<Barrel> withSyrupOf(String lot) {
    return query.read("l.code = ? AND b.amount > 0", Integer.MAX_VALUE, lot);
  }
}
