package org.barreltally.keeping;

import javax.sql.DataSource;

/**
 * The book's database, opened as its owner, who sees every table and may make them anew.
 *
 * @param owner opens connections of the owner, outside the application's pool
 * @param applicationRole the role that reads and writes the book; migrations grant it rights
 * @param loginRole the role under which the application signs in: the same where the program keeps
 *     one book
 * @param schema where the book's tables stand
 */
public record OwnedDatabase(
    DataSource owner, String applicationRole, String loginRole, String schema) {

  /** Whether the application signs in for other books as well. */
  public boolean isOneOfSeveral() {
    return !applicationRole.equals(loginRole);
  }
}
