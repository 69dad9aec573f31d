package org.barreltally.cost.flow;

/**
 * What is valued together.
 *
 * @param lot null unless each lot is valued by itself
 * @param container null for syrup in bulk
 */
public record PoolKey(String lot, String container, String grade) implements Comparable<PoolKey> {

  @Override
  public int compareTo(PoolKey other) {
    return order().compareTo(other.order());
  }

  private String order() {
    return (container == null ? "" : container) + "\t" + grade + "\t" + (lot == null ? "" : lot);
  }
}
