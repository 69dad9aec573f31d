package org.barreltally.containers.internal;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

/** The containers in the database, for this package alone. */
@ApplicationScoped
public class ContainerRows implements PanacheRepositoryBase<ContainerRow, String> {}
