package org.barreltally.people.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.util.Arrays;
import java.util.UUID;
import java.util.stream.Collectors;
import org.barreltally.people.EntranceEvent;
import org.barreltally.people.EntranceLog;
import org.barreltally.refusal.InvalidField;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Who signed in, who tried, and what was changed about people. The owner alone reads it. */
@Path("/api/entrance-log")
@RolesAllowed("owner")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "People")
public class EntranceLogApi {

  private final EntranceLog log;

  @Inject
  EntranceLogApi(EntranceLog log) {
    this.log = log;
  }

  @GET
  @Operation(
      summary = "Who signed in, who tried and could not, and what was changed about people",
      description =
          "Newest first. Nothing in it is changed or removed; people are known by their record, so a"
              + " name that is removed is gone here too. A name that nobody has is not kept.")
  public Page<EntranceLog.Entry> list(
      @QueryParam("person") String person,
      @QueryParam("what") String what,
      @QueryParam("limit") String limit,
      @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        log.newest(
            person == null || person.isBlank() ? null : person.strip(),
            event(what),
            page.after(EntranceLogApi::place).orElse(null),
            page.limit() + 1),
        entry -> entry.at() + " " + entry.id());
  }

  private static EntranceLog.Place place(String key) {
    String[] parts = key.split(" ", 2);
    return new EntranceLog.Place(Instant.parse(parts[0]), UUID.fromString(parts[1]));
  }

  private static EntranceEvent event(String code) {
    if (code == null || code.isBlank()) {
      return null;
    }
    return Arrays.stream(EntranceEvent.values())
        .filter(event -> event.code().equals(code))
        .findFirst()
        .orElseThrow(
            () ->
                new InvalidField(
                    "what",
                    "Give one of "
                        + Arrays.stream(EntranceEvent.values())
                            .map(EntranceEvent::code)
                            .collect(Collectors.joining(", "))
                        + "."));
  }
}
