package org.barreltally.web.access;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.barreltally.people.Role;

/**
 * Who may change what, by the path that is asked, the same for pages and for the interface. Every
 * role reads everything. The owner changes everything; what no rule names is the owner's alone.
 */
public final class RoleRules {

  /** A path, after an optional {@code /api}, and who besides the owner may change things there. */
  private record Rule(Pattern path, Set<Role> roles) {

    static Rule of(String path, Role... roles) {
      return new Rule(
          Pattern.compile("(/api)?/(" + path + ")(/.*)?"),
          roles.length == 0 ? EnumSet.noneOf(Role.class) : EnumSet.copyOf(List.of(roles)));
    }
  }

  /** The first rule that fits a path decides. */
  private static final List<Rule> RULES =
      List.of(
          // Questions that are posted because they are long; they store nothing.
          Rule.of(
              "canning/what-if|gift-orders/what-if|price-lists/[^/]+/quote|shows/[^/]+/plan"
                  + "|reconciliation/flows",
              Role.CANNING,
              Role.TABLE,
              Role.PACKING),
          Rule.of("tokens", Role.CANNING, Role.TABLE, Role.PACKING),
          // Work that takes a while; each kind of it names its own roles.
          Rule.of("errands", Role.CANNING, Role.TABLE, Role.PACKING),
          // The sugarhouse and the canning room.
          Rule.of(
              "sap|concentrates|boils|sugarhouse|barrels|vessels|purchases|canning", Role.CANNING),
          Rule.of("lots/[^/]+/label-prints", Role.CANNING, Role.PACKING),
          Rule.of("lots|supplies|storerooms|planned-canning", Role.CANNING),
          Rule.of("movements|opening-stock", Role.CANNING),
          // Whoever counts, carries or drops jars says so.
          Rule.of("stock|counts", Role.CANNING, Role.TABLE, Role.PACKING),
          // A show's table; booking, fees and settlement are the owner's.
          Rule.of(
              "shows/[^/]+/(state|call-off|settlement|settle|payments|awards|reservations|change)"),
          Rule.of("shows/[^/]+/.+|table", Role.TABLE),
          Rule.of("leads|phones/leads", Role.TABLE, Role.PACKING),
          Rule.of("sales", Role.TABLE, Role.PACKING),
          // Parcels, shops and landowners; terms and money agreed with them are the owner's.
          Rule.of("gift-orders", Role.PACKING),
          Rule.of("shops/[^/]+/(deliveries|fetchings|counts|bring|fetch|count)", Role.PACKING),
          Rule.of("leases/[^/]+/(deliveries|hand-over)", Role.PACKING));

  private RoleRules() {}

  /** Whether somebody in a role may change what stands at a path. */
  public static boolean mayChange(Role role, String path) {
    return role == Role.OWNER || others(path).contains(role);
  }

  /** Who besides the owner may change what stands at a path. */
  static Set<Role> others(String path) {
    return RULES.stream()
        .filter(rule -> rule.path().matcher(path).matches())
        .findFirst()
        .map(Rule::roles)
        .orElse(Set.of());
  }
}
