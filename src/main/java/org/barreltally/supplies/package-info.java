/**
 * What packing needs besides syrup: jars, caps, labels and cartons, received, counted and used up
 * by canning runs.
 */
package org.barreltally.supplies;
