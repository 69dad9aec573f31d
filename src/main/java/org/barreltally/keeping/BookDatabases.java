package org.barreltally.keeping;

/** Opens the book at hand as its owner. */
public interface BookDatabases {

  /** The database of the book at hand. */
  OwnedDatabase here();
}
