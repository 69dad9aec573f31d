package org.barreltally.shows.internal;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;

/** The shows in the database, for this package alone. */
@ApplicationScoped
public class ShowRows implements PanacheRepositoryBase<ShowRow, UUID> {}
