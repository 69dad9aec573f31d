package org.barreltally.documents;

import java.util.List;

/**
 * What stands on a price list that is handed out.
 *
 * @param title what it is, for example {@code Price list}
 * @param name of the list
 * @param validity from when, and until when
 * @param notices what warns of an old list; empty for one that holds
 * @param footnotes currency, tax and contents
 * @param version of the list, as it stands at the foot of each page
 */
public record PriceSheetText(
    String maker,
    List<String> address,
    String title,
    String name,
    String validity,
    List<String> notices,
    List<Section> sections,
    List<String> footnotes,
    String version) {

  public PriceSheetText {
    address = List.copyOf(address);
    notices = List.copyOf(notices);
    sections = List.copyOf(sections);
    footnotes = List.copyOf(footnotes);
  }

  /** Prices under one heading: a grade, or the deals. */
  public record Section(String heading, List<Row> rows) {

    public Section {
      rows = List.copyOf(rows);
    }
  }

  /**
   * @param name of the jar
   * @param detail its contents, in smaller type
   */
  public record Row(String name, String detail, String price) {

    /** The detail without what stands in brackets, where there is less room. */
    public String shortDetail() {
      int bracket = detail.indexOf(" (");
      return bracket < 0 ? detail : detail.substring(0, bracket);
    }
  }
}
