/**
 * Recalls: from a lot or barrel, everything its syrup went into, what is on hand, who holds the
 * rest by name and how much the public has. A rehearsal changes nothing but the record that it was
 * held.
 *
 * <p>The tool finds and writes; your food inspector and your state agency decide what a recall
 * takes.
 */
package org.barreltally.recall;
