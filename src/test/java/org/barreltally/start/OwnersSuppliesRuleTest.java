package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import org.barreltally.Owner;
import org.barreltally.ledger.Days;
import org.barreltally.supplies.SuppliesRule;
import org.junit.jupiter.api.Test;

@QuarkusTest
class OwnersSuppliesRuleTest {

  @Inject SuppliesRule rule;
  @Inject Days days;

  @Test
  void runs_of_today_are_refused_once_the_owner_says_so_and_those_of_earlier_days_are_not() {
    LocalDate today = days.today();
    assertFalse(rule.refuses(today));
    try {
      Owner.posts("/api/settings", "{'suppliesRule': 'refuse'}").statusCode(200);
      assertTrue(rule.refuses(today));
      assertFalse(rule.refuses(today.minusDays(2)));
    } finally {
      Owner.posts("/api/settings", "{'suppliesRule': 'warn'}").statusCode(200);
    }
    assertFalse(rule.refuses(today));
  }
}
