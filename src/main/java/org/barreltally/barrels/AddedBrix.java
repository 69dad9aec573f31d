package org.barreltally.barrels;

import org.barreltally.measure.Uncertain;

/** The Brix of syrup that was added to a barrel, from the sugar of the whole. */
final class AddedBrix {

  private AddedBrix() {}

  /**
   * Sugar is neither made nor lost: x = (W b - T t) / (W - T), where W and b are mass and Brix of
   * the whole, T and t of what was there. Its uncertainty (GUM 5.1.2) is large when little was
   * added, so a value outside what syrup can be is taken to the nearest that can, if the
   * uncertainty reaches there.
   *
   * @param there grams before, less than {@code whole}
   * @return between the least and the most Brix of syrup
   * @throws AddedSyrupImplausible if it is no syrup even so
   */
  static Uncertain of(Uncertain there, Uncertain thereBrix, Uncertain whole, Uncertain wholeBrix) {
    double added = whole.value() - there.value();
    double brix = (whole.value() * wholeBrix.value() - there.value() * thereBrix.value()) / added;
    double byBrix = Math.hypot(whole.value() * wholeBrix.u(), there.value() * thereBrix.u());
    double byMass =
        Math.hypot((wholeBrix.value() - brix) * whole.u(), (brix - thereBrix.value()) * there.u());
    double u = Math.hypot(byBrix, byMass) / added;
    double nearest = Math.max(Readings.LEAST_BRIX, Math.min(Readings.MOST_BRIX, brix));
    if (Math.abs(brix - nearest) > Uncertain.COVERAGE * u) {
      throw new AddedSyrupImplausible(brix);
    }
    return new Uncertain(nearest, u);
  }
}
