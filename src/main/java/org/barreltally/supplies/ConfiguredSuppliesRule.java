package org.barreltally.supplies;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Locale;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The rule from {@code barreltally.supplies-rule}, {@code warn} or {@code refuse}, for every day.
 */
@ApplicationScoped
@DefaultBean
class ConfiguredSuppliesRule implements SuppliesRule {

  private enum Rule {
    WARN,
    REFUSE
  }

  private final Rule rule;

  ConfiguredSuppliesRule(
      @ConfigProperty(name = "barreltally.supplies-rule", defaultValue = "warn") String rule) {
    this.rule = Rule.valueOf(rule.toUpperCase(Locale.ROOT));
  }

  @Override
  public boolean refuses(LocalDate on) {
    return rule == Rule.REFUSE;
  }
}
