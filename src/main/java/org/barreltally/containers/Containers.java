package org.barreltally.containers;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.barreltally.books.Books;
import org.barreltally.books.OfEachBook;
import org.barreltally.containers.internal.ContainerRow;
import org.barreltally.containers.internal.ContainerRows;
import org.hibernate.exception.ConstraintViolationException;

/**
 * The container sizes. A size is added once and keeps its contents, because jars were filled by
 * them; a shaped bottle is added by the owner with contents of its own.
 */
@ApplicationScoped
public class Containers {

  private final ContainerRows rows;
  private final EntityManager entities;

  /** A size never changes once it is stored, so it is read once. */
  private final OfEachBook<Map<String, Container>> seen;

  Containers(ContainerRows rows, EntityManager entities, Books books) {
    this.rows = rows;
    this.entities = entities;
    this.seen = books.keeping(ConcurrentHashMap::new);
  }

  @Transactional
  public Optional<Container> find(String code) {
    if (code == null) {
      return Optional.empty();
    }
    Container known = seen.here().get(code);
    if (known != null) {
      return Optional.of(known);
    }
    Optional<Container> found = rows.findByIdOptional(code).map(ContainerRow::asContainer);
    found.ifPresent(container -> seen.here().put(code, container));
    return found;
  }

  /**
   * The container an address names.
   *
   * @throws UnknownContainer as not found
   */
  public Container at(String code) {
    return find(code).orElseThrow(() -> new UnknownContainer(code));
  }

  /**
   * The container a field names.
   *
   * @throws UnknownContainer naming the field
   */
  public Container named(String code, String field) {
    return find(code).orElseThrow(() -> new UnknownContainer(code, field));
  }

  /** Containers by code, after a code, at most so many. */
  @Transactional
  public List<Container> list(String after, int limit) {
    return rows.find("code > ?1 order by code", after == null ? "" : after).page(0, limit).stream()
        .map(ContainerRow::asContainer)
        .toList();
  }

  /**
   * Adds a size.
   *
   * @throws org.barreltally.refusal.InvalidField naming every field that needs mending
   * @throws BrimfulUnderContents if less fits in than is said to be in it
   * @throws ContainerExists if the code is taken
   */
  @Transactional
  public Container add(Container said) {
    ContainerRules.check(said);
    if (find(said.code()).isPresent()) {
      throw new ContainerExists(said.code());
    }
    ContainerRow row = new ContainerRow(said);
    try {
      rows.persist(row);
      entities.flush();
    } catch (ConstraintViolationException takenMeanwhile) {
      throw new ContainerExists(said.code());
    }
    return row.asContainer();
  }
}
