package org.barreltally.canning;

/**
 * What runs lost, added up from their sheets.
 *
 * @param runs how many, without those taken back
 * @param byCause in gallons at 68 °F
 */
public record RunsShrink(int runs, PackSheet.Causes byCause) {}
