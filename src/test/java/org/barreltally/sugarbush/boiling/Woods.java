package org.barreltally.sugarbush.boiling;

import static org.barreltally.Owner.newTag;
import static org.barreltally.Owner.posts;

import java.util.Locale;

/** Bushes and JSON for the sugarhouse's tests; names and tanks are no other test's. */
public final class Woods {

  private Woods() {}

  /** A bush of one's own with taps from January on. */
  public static String ownBush(int season, int taps) {
    String name = newTag("Own");
    posts("/api/bushes", "{'name': '%s'}".formatted(name)).statusCode(201);
    posts(
            "/api/bushes/" + name + "/taps",
            "{'season': %d, 'from': '%d-01-10', 'count': %d}".formatted(season, season, taps))
        .statusCode(201);
    return name;
  }

  /** A leased bush of which 5 more taps were agreed than set. */
  public static String leasedBush(int season, int taps) {
    String name = newTag("Leased");
    posts(
            "/api/leases",
            """
            {'landowner': '%s', 'bush': '%s', 'season': %d, 'basis': 'volume', 'governs': 'agreed',
             'ratePerTap': {'amount': 1, 'currency': 'USD'}, 'price': {'amount': 55, 'currency': 'USD'},
             'taps': [{'from': '%d-01-05', 'count': %d}, {'from': '%d-01-10', 'count': %d, 'kind': 'set'}]}
            """
                .formatted(newTag("Odile "), name, season, season, taps + 5, season, taps))
        .statusCode(201);
    return name;
  }

  public static String sap(String on, String bush, double litres, double brix, String tank) {
    return "{'on': '%s', 'bush': '%s', %s}".formatted(on, bush, gauged(litres, brix, tank));
  }

  /** Read at 68 °F, so that nothing shrinks and sums can be done by hand. */
  public static String gauged(double litres, double brix, String tank) {
    return String.format(
        Locale.ROOT,
        "'volume': {'value': %.3f, 'unit': 'L'}, 'temperature': {'value': 68, 'unit': 'degF'}, 'brix': %.2f, 'tank': '%s'",
        litres,
        brix,
        tank);
  }

  public static String concentrate(
      String on, double in, double brixIn, String from, double out, double brixOut, String to) {
    return "{'on': '%s', 'sap': {%s}, 'concentrate': {%s}}"
        .formatted(on, gauged(in, brixIn, from), gauged(out, brixOut, to));
  }

  public static String boil(String on, String more) {
    return "{'on': '%s', 'startedAt': '%sT12:00:00Z', 'targetBrix': 66.9%s}"
        .formatted(on, on, more);
  }

  public static String feed(double litres, double brix, String tank) {
    return "{'of': 'concentrate', " + gauged(litres, brix, tank) + "}";
  }

  /** Net kilograms as a scale reads, 66.9 °Bx, into B-77. */
  public static String drawn(String at, double kilograms) {
    return String.format(
        Locale.ROOT,
        "{'at': '%s', 'weight': {'value': %.3f, 'unit': 'kg'}, %s, 'barrel': 'B-77'}",
        at,
        kilograms,
        density(66.9));
  }

  public static String density(double brix) {
    return String.format(
        Locale.ROOT,
        "'density': {'reading': {'value': %.2f, 'unit': 'Brix'}, 'temperature': {'value': 68, 'unit': 'degF'}, 'instrument': 'refractometer'}",
        brix);
  }
}
