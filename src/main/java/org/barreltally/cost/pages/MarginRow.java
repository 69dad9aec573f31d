package org.barreltally.cost.pages;

import io.quarkus.qute.TemplateData;
import java.util.Map;
import org.barreltally.cost.Margins;
import org.barreltally.pricing.Money;

/**
 * A row of what was earned, with a name that people know.
 *
 * @param charges all of them together
 */
@TemplateData
public record MarginRow(
    String what, String name, Long count, Money takings, Money goods, Money charges, Money margin) {

  static MarginRow of(Margins.Row row, Map<String, String> showNames) {
    return new MarginRow(
        row.what(),
        row.what().equals("show") ? showNames.getOrDefault(row.name(), row.name()) : row.name(),
        row.count(),
        row.takings(),
        row.goods(),
        row.takings().minus(row.goods()).minus(row.margin()),
        row.margin());
  }
}
