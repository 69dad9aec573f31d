package org.barreltally.canning.internal;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

/** The runs in the database, for this package alone. */
@ApplicationScoped
public class RunRows implements PanacheRepositoryBase<RunRow, String> {}
