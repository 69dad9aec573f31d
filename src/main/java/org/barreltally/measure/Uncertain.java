package org.barreltally.measure;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.barreltally.refusal.Refusal;

/**
 * A value with its standard uncertainty, in the same unit, propagated to first order for inputs
 * that are not correlated (GUM, JCGM 100:2008, 5.1.2). Adding a value to itself is therefore wrong:
 * use {@link #times(double)}.
 */
public record Uncertain(double value, double u) {

  /** Coverage factor of comparisons: about 95 percent (GUM 6.2). */
  public static final double COVERAGE = 2;

  private static final double STEP = 1e-4;

  public Uncertain {
    if (!Double.isFinite(value) || !Double.isFinite(u) || u < 0) {
      throw new IllegalArgumentException("not a value with its uncertainty: " + value + ", " + u);
    }
  }

  /** A value that was counted or defined. */
  public static Uncertain exact(double value) {
    return new Uncertain(value, 0);
  }

  /** A value known to lie within ± the half width: u = a/√3, rectangular (GUM 4.3.7). */
  public static Uncertain within(double value, double halfWidth) {
    return new Uncertain(value, halfWidth / Math.sqrt(3));
  }

  public Uncertain plus(Uncertain o) {
    return new Uncertain(value + o.value, Math.hypot(u, o.u));
  }

  public Uncertain minus(Uncertain o) {
    return new Uncertain(value - o.value, Math.hypot(u, o.u));
  }

  public Uncertain times(double k) {
    return new Uncertain(value * k, u * Math.abs(k));
  }

  public Uncertain times(Uncertain o) {
    return new Uncertain(value * o.value, Math.hypot(value * o.u, o.value * u));
  }

  /** The divisor must not be zero. */
  public Uncertain dividedBy(Uncertain o) {
    double quotient = value / o.value;
    return new Uncertain(quotient, Math.hypot(u / o.value, quotient * o.u / o.value));
  }

  /** Whether the two differ by more than twice the standard uncertainty of their difference. */
  public boolean differsFrom(Uncertain o) {
    Uncertain gap = minus(o);
    return Math.abs(gap.value) > COVERAGE * gap.u;
  }

  /** f of an uncertain value, its slope found numerically (one-sided at the edge of f's range). */
  public static Uncertain through(DoubleUnaryOperator f, Uncertain x) {
    double y = f.applyAsDouble(x.value);
    return new Uncertain(y, x.u == 0 ? 0 : Math.abs(slope(f, x.value, y)) * x.u);
  }

  /** f of two uncertain values that are not correlated, the slopes found numerically. */
  public static Uncertain through(DoubleBinaryOperator f, Uncertain a, Uncertain b) {
    Uncertain byA = through(x -> f.applyAsDouble(x, b.value), a);
    Uncertain byB = through(x -> f.applyAsDouble(a.value, x), b);
    return new Uncertain(byA.value, Math.hypot(byA.u, byB.u));
  }

  private static double slope(DoubleUnaryOperator f, double x, double y) {
    double step = STEP * Math.max(1, Math.abs(x));
    double up = orNaN(f, x + step);
    double down = orNaN(f, x - step);
    if (Double.isNaN(up)) {
      return (y - down) / step;
    }
    return Double.isNaN(down) ? (up - y) / step : (up - down) / (2 * step);
  }

  private static double orNaN(DoubleUnaryOperator f, double x) {
    try {
      return f.applyAsDouble(x);
    } catch (Refusal outOfRange) {
      return Double.NaN;
    }
  }
}
