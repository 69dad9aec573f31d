package org.barreltally.documents.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.barreltally.documents.Paper;
import org.barreltally.documents.season.SeasonBooks;
import org.barreltally.web.Asked;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The book of a season. */
@Path("/api/season-book.pdf")
@Tag(name = "Papers")
public class SeasonBookApi {

  private final SeasonBooks books;

  SeasonBookApi(SeasonBooks books) {
    this.books = books;
  }

  @GET
  @Produces(PdfAnswer.TYPE)
  @RolesAllowed("owner")
  @Operation(
      summary = "Draw the book of a season",
      description =
          "All that the book says of a year in one PDF: its balance and what it leaves unexplained, lots, barrels,"
              + " runs, stock on the closing day, sales, shows, gift orders, shares, shops, counts, recalls,"
              + " corrections and backups. Buyers, recipients and landowners are not named. season is the year;"
              + " that of a closed year tells what was known at its closing, whenever it is drawn. paper is"
              + " letter or a4; without it the maker's usual. It helps your records; your state agency,"
              + " inspector and tax preparer decide.")
  @APIResponse(
      responseCode = "200",
      description = "Title page, contents and chapters",
      content =
          @Content(
              mediaType = PdfAnswer.TYPE,
              examples = @ExampleObject(name = "book", value = PdfAnswer.EXAMPLE)))
  public Response draw(@QueryParam("season") String season, @QueryParam("paper") String paper) {
    int year = Asked.yearGiven(season, "season");
    return PdfAnswer.of(
        books.of(year, Asked.oneOf(Paper.values(), Paper::code, paper, "paper")),
        "season-book-" + year);
  }
}
