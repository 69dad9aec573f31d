package org.barreltally.keeping;

import javax.sql.DataSource;

/**
 * The book's database, opened as its owner, who sees every table and may make them anew.
 *
 * @param owner opens connections of the owner, outside the application's pool
 * @param applicationRole the role under which the application signs in; migrations grant it rights
 * @param schema where the book's tables stand
 */
public record OwnedDatabase(DataSource owner, String applicationRole, String schema) {}
