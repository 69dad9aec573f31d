package org.barreltally.start;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.barreltally.keeping.OwnedDatabase;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Opens the book's database as its owner, by the login that the migrations have. */
class OwnedBook {

  @Produces
  @Singleton
  OwnedDatabase database(
      @ConfigProperty(name = "quarkus.flyway.jdbc-url") String url,
      @ConfigProperty(name = "quarkus.flyway.username") String user,
      @ConfigProperty(name = "quarkus.flyway.password") String password,
      @ConfigProperty(name = "quarkus.datasource.username") String applicationRole) {
    return new DatabaseLogin(url, "", user, password).owned(applicationRole);
  }
}
