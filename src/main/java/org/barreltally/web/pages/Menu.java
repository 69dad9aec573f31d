package org.barreltally.web.pages;

import io.quarkus.arc.All;
import io.quarkus.arc.Unremovable;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The menu: all pages that say they stand in it. */
@ApplicationScoped
@Unremovable
public class Menu {

  /** A part of the menu with its pages. */
  @TemplateData
  public record Part(String code, List<Link> links) {}

  /** A page in the menu. */
  @TemplateData
  public record Link(String path, String words, boolean forOwner) {

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
              .map(entry -> new Link(entry.path(), entry.words(), entry.forOwner()))
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
