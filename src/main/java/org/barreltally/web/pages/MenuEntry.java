package org.barreltally.web.pages;

/**
 * A page that stands in the menu. The page's own resource says so; those whom its class does not
 * allow ({@code @RolesAllowed}) do not see it there. Such a class lets everybody ask these methods
 * ({@code @PermitAll}): the menu is made once, whoever comes first.
 */
public interface MenuEntry {

  /** The parts of the menu, in their order. */
  enum Part {
    TODAY,
    SYRUP,
    SALES,
    TREES,
    YEAR,
    HOUSE;

    /** {@code today, syrup, sales, trees, year, house}. */
    public String code() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Where the page stands, for example {@code /barrels}. */
  String path();

  /** The key of its name in {@link Words}. */
  String words();

  Part part();

  /** Its place within its part, the lowest first. */
  int order();
}
