package org.barreltally.keeping;

/**
 * A backup in the folder.
 *
 * @param atSecondPlace whether a copy of it lies at the second place; null where none is set
 */
public record Kept(Backup backup, Boolean atSecondPlace) {}
