package org.barreltally.lots;

/**
 * A lot's parent and how much of it went in.
 *
 * @param grams of the parent that went in; zero where only an unwashed vessel links the two
 * @param share fraction (0 to 1) of the child's syrup that came from this parent; added water does
 *     not count
 */
public record Parent(String child, String parent, long grams, double share) {}
