package org.barreltally.shows.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import org.barreltally.shows.ShowCalendar;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** All shows as a calendar. */
@Path("/api/shows.ics")
@Tag(name = "Shows")
public class CalendarApi {

  private static final String CALENDAR = "text/calendar;charset=UTF-8";

  private final ShowCalendar calendar;

  CalendarApi(ShowCalendar calendar) {
    this.calendar = calendar;
  }

  @GET
  @Produces(CALENDAR)
  @Operation(
      summary = "The shows as a calendar to subscribe to",
      description =
          "RFC 5545: each show, its set-up, and its deadlines, which alarm a week and a day before."
              + " Shows stay in it for 400 days.")
  @APIResponse(
      responseCode = "200",
      description = "The calendar",
      content =
          @Content(
              mediaType = "text/calendar",
              examples =
                  @ExampleObject(
                      name = "no shows",
                      value =
                          "BEGIN:VCALENDAR\nPRODID:-//Barreltally//Shows//EN\nVERSION:2.0\nEND:VCALENDAR")))
  public String calendar() {
    return calendar.text();
  }
}
