/**
 * What syrup weighs, measures and reads: quantities with units, the physics of sucrose solutions,
 * readings of the maker's instruments with their uncertainty, blends and grades.
 *
 * <p>Quantities are exact decimals as a person typed them; physics is done in {@code double}, in
 * grams, millilitres, degrees Celsius, kg/m³ and °Brix (percent sucrose by mass). Mass stays true
 * through heat and water, so volumes are always derived from it. The tables behind it lie in {@code
 * db/reference}, each with its source. Knows only the refusals.
 */
package org.barreltally.measure;
