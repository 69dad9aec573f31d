package org.barreltally.start;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.books.Books;
import org.barreltally.keeping.BookDatabases;
import org.barreltally.keeping.OwnedDatabase;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Opens the book at hand as its owner, by the login that the migrations have. */
@ApplicationScoped
class OwnedBook implements BookDatabases {

  private final DatabaseLogin owner;
  private final String loginRole;
  private final Books books;

  OwnedBook(
      @ConfigProperty(name = "quarkus.flyway.jdbc-url") String url,
      @ConfigProperty(name = "quarkus.flyway.username") String user,
      @ConfigProperty(name = "quarkus.flyway.password") String password,
      @ConfigProperty(name = "quarkus.datasource.username") String loginRole,
      Books books) {
    this.owner = new DatabaseLogin(url, "", user, password);
    this.loginRole = loginRole;
    this.books = books;
  }

  @Override
  public OwnedDatabase here() {
    return books.several() ? owner.owned(books.here(), loginRole) : owner.owned(loginRole);
  }
}
