package org.barreltally.web.pages;

import io.quarkus.arc.All;
import io.quarkus.arc.Unremovable;
import io.quarkus.qute.TemplateData;
import jakarta.annotation.security.RolesAllowed;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** The menu: all pages that say they stand in it. */
@ApplicationScoped
@Unremovable
public class Menu {

  /** A part of the menu with its pages. */
  @TemplateData
  public record Part(String code, List<Link> links) {}

  /**
   * A page in the menu.
   *
   * @param readers the roles that may read it; empty for all
   */
  @TemplateData
  public record Link(String path, String words, Set<String> readers) {

    static Link to(MenuEntry entry) {
      return new Link(entry.path(), entry.words(), readers(entry.getClass()));
    }

    /** The class that was written, or one that the container made of it, names the roles. */
    private static Set<String> readers(Class<?> page) {
      RolesAllowed allowed = page.getAnnotation(RolesAllowed.class);
      if (allowed != null) {
        return Set.of(allowed.value());
      }
      return page.getSuperclass() == null ? Set.of() : readers(page.getSuperclass());
    }

    /** Whether somebody in a role may read it. */
    public boolean isFor(String role) {
      return readers.isEmpty() || readers.contains(role);
    }

    /** Whether a path is this page or lies under it. */
    public boolean leadsTo(String here) {
      return here.equals(path) || !path.equals("/") && here.startsWith(path + "/");
    }
  }

  private final List<Part> parts;

  @Inject
  Menu(@All List<MenuEntry> entries) {
    List<Part> found = new ArrayList<>();
    for (MenuEntry.Part part : MenuEntry.Part.values()) {
      List<Link> links =
          entries.stream()
              .filter(entry -> entry.part() == part)
              .sorted(Comparator.comparingInt(MenuEntry::order))
              .map(Link::to)
              .toList();
      if (!links.isEmpty()) {
        found.add(new Part(part.code(), links));
      }
    }
    parts = List.copyOf(found);
  }

  Menu() {
    parts = List.of();
  }

  /** The parts that have pages, in their order. */
  public List<Part> parts() {
    return parts;
  }
}
