package org.barreltally.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.barreltally.documents.internal.BookCover;
import org.barreltally.documents.internal.BookPages;
import org.barreltally.documents.internal.BookPages.Heading;
import org.barreltally.documents.internal.BookPdf;
import org.barreltally.documents.internal.BookPdf.Chapter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages of a book: their numbers, the heads of tables that go on, and texts of any kind. */
class BookPagesTest {

  private static final BookCover COVER =
      new BookCover("Fernby Sugarhouse", "Season 2026", List.of("A line"), "Who decides", "open");

  @ParameterizedTest
  @EnumSource(Paper.class)
  void a_long_table_repeats_its_head_and_every_page_says_which_it_is(Paper paper) throws Exception {
    byte[] pdf =
        BookPdf.render(
            COVER,
            paper,
            List.of(
                new Chapter("Barrels", out -> numbered(out, 400)),
                new Chapter("Lots", out -> numbered(out, 1000)),
                new Chapter("Nothing", out -> numbered(out, 0))));
    List<String> pages = pages(pdf);
    // Some 55 rows of 8.4 point type stand on a page: 1,400 rows need between 20 and 40 pages.
    assertTrue(pages.size() > 22 && pages.size() < 42, "pages: " + pages.size());
    int seen = 0;
    for (int n = 0; n < pages.size(); n++) {
      String page = pages.get(n);
      assertTrue(page.contains("page " + (n + 1) + " of " + pages.size()), page);
      long rows = page.lines().filter(line -> line.matches("row \\d+ \\d+ kg")).count();
      seen += (int) rows;
      assertEquals(rows > 0, page.contains("What How much"), "a head wherever there are rows");
    }
    assertEquals(1400, seen);
    assertTrue(pages.get(pages.size() - 1).contains("None in this year."));
    for (String title : List.of("Barrels", "Lots", "Nothing")) {
      int begins = 0;
      for (int n = 2; n < pages.size() && begins == 0; n++) {
        begins = pages.get(n).lines().anyMatch(title::equals) ? n + 1 : 0;
      }
      assertTrue(pages.get(1).lines().anyMatch((title + " " + begins)::equals), pages.get(1));
    }
  }

  @Test
  void nothing_is_refused_for_its_characters_or_its_length() throws Exception {
    String text = "Ægir’s Яблоко תפוח 楓糖 🍁 · a fact · another \u0007 " + "x".repeat(300);
    byte[] pdf =
        BookPdf.render(
            new BookCover(text, "Season 2026", List.of(text), text, "open"),
            Paper.LETTER,
            List.of(
                new Chapter(
                    "All",
                    out -> {
                      out.say(text);
                      out.note(text);
                      out.table(Heading.of("What", 0.1), Heading.number("How much", 0.05));
                      out.row(text, text);
                      out.row(null, "");
                    })));
    String found = String.join("", pages(pdf)).replaceAll("\\s+", "");
    assertTrue(found.contains("Ægir’sЯблоко"), found);
    assertTrue(found.contains("[U+7CD6]") && found.contains("[U+1F341]"), found);
    assertTrue(found.contains("x".repeat(300)), "parted, not cut");
    assertFalse(found.contains("楓"));
  }

  private static void numbered(BookPages out, int rows) {
    out.note("A note");
    out.table(Heading.of("What", 0.7), Heading.number("How much", 0.3));
    for (int n = 1; n <= rows; n++) {
      out.row("row " + n, n + " kg");
    }
  }

  private static List<String> pages(byte[] pdf) throws Exception {
    List<String> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int n = 1; n <= document.getNumberOfPages(); n++) {
        PDFTextStripper one = new PDFTextStripper();
        one.setSortByPosition(true);
        one.setStartPage(n);
        one.setEndPage(n);
        pages.add(one.getText(document));
      }
    }
    return pages;
  }
}
