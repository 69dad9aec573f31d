package org.barreltally.web.access;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.barreltally.people.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may change what, path by path, as the sugarhouse's work is parted. */
class RoleRulesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /api/barrels                        | canning owner
          /barrels/new                        | canning owner
          /api/canning/runs                   | canning owner
          /api/canning/what-if                | canning owner packing table
          /api/sap                            | canning owner
          /api/lots/P1/hold                   | canning owner
          /api/lots/P1/label-prints           | canning owner packing
          /api/stock/counts                   | canning owner packing table
          /api/stock/relocations              | canning owner packing table
          /api/movements/1/reversal           | canning owner
          /api/shows                          | owner
          /api/shows/1                        | owner
          /api/shows/1/state                  | owner
          /api/shows/1/settlement             | owner
          /api/shows/1/call-off               | owner
          /api/shows/1/sales                  | owner table
          /api/shows/1/pack-out               | owner table
          /api/shows/1/back                   | owner table
          /api/sales                          | owner packing table
          /api/gift-orders                    | owner packing
          /api/gift-orders/1/recipients/1/pick| owner packing
          /api/shops                          | owner
          /api/shops/q/terms                  | owner
          /api/shops/q/counts                 | owner packing
          /api/leases                         | owner
          /api/leases/1/deliveries            | owner packing
          /api/price-lists                    | owner
          /api/settings                       | owner
          /api/people                         | owner
          /api/recalls                        | owner
          /api/years/2026/closing             | owner
          /api/costs                          | owner
          /api/barrelsandmore                 | owner
          /api/tokens                         | canning owner packing table
          """)
  void each_role_changes_its_part(String path, String roles) {
    Set<String> may =
        EnumSet.allOf(Role.class).stream()
            .filter(role -> RoleRules.mayChange(role, path))
            .map(Role::code)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(roles, String.join(" ", may));
  }
}
