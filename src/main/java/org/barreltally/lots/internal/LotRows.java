package org.barreltally.lots.internal;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

/** The lots in the database, for this package alone. */
@ApplicationScoped
public class LotRows implements PanacheRepositoryBase<LotRow, String> {}
