package org.barreltally.measure;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;

/** The jurisdictions of the reference tables, read once. */
final class Jurisdictions {
  private static final Map<String, Jurisdiction> KNOWN = read();

  private Jurisdictions() {}

  static Jurisdiction of(String code) {
    Jurisdiction known = KNOWN.get(code);
    if (known == null) {
      throw new UnknownJurisdiction(KNOWN.keySet());
    }
    return known;
  }

  static Collection<Jurisdiction> all() {
    return KNOWN.values();
  }

  private static Map<String, Jurisdiction> read() {
    List<CSVRecord> limits = ReferenceTable.rows("color_limits.csv");
    Map<String, Jurisdiction> read = new LinkedHashMap<>();
    for (CSVRecord row : ReferenceTable.rows("jurisdictions.csv")) {
      read.put(row.get("code"), jurisdiction(row, limits));
    }
    return Collections.unmodifiableMap(read);
  }

  private static Jurisdiction jurisdiction(CSVRecord row, List<CSVRecord> limits) {
    String code = row.get("code");
    return new Jurisdiction(
        code,
        row.get("name"),
        ReferenceTable.number(row, "brix_min"),
        ReferenceTable.number(row, "brix_max"),
        Temperatures.celsius(ReferenceTable.number(row, "reference_fahrenheit")),
        limits.stream()
            .filter(limit -> limit.get("jurisdiction").equals(code))
            .map(Jurisdictions::limit)
            .sorted(Comparator.comparingDouble(ColorLimit::transmittanceMin).reversed())
            .toList(),
        row.get("source"));
  }

  private static ColorLimit limit(CSVRecord row) {
    return new ColorLimit(
        ColorClass.of(row.get("color_class")), ReferenceTable.number(row, "transmittance_min"));
  }
}
