package org.barreltally.stock.internal;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** The lot codes of a file: each is of the right form, new to the book, and of one lot only. */
public final class LotCodes {

  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9.-]{0,19}");

  private final Predicate<String> taken;
  private final Set<String> claimed = new HashSet<>();

  /**
   * @param taken whether the book has a lot of that code
   */
  public LotCodes(Predicate<String> taken) {
    this.taken = taken;
  }

  /** Takes a code for the lot of a row, or notes in the row why not. */
  public void claim(String code, Cells cells) {
    if (!CODE.matcher(code).matches()) {
      cells.wrong(
          Column.LOT,
          "Give a code of capital letters, digits, dots and dashes, at most 20, for example"
              + " P250620-1.");
    } else if (taken.test(code)) {
      cells.wrong(Column.LOT, "The book has a lot " + code + " already. Check the code.");
    } else if (!claimed.add(code)) {
      cells.wrong(Column.LOT, "An earlier line has another lot " + code + ". Check the code.");
    }
  }
}
