package org.barreltally.settings.rest;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.barreltally.refusal.InvalidField;
import org.barreltally.settings.FarmSettings;
import org.barreltally.settings.MakerSettings;
import org.barreltally.settings.SettingRecord;
import org.barreltally.settings.SettingsChange;
import org.barreltally.web.Page;
import org.barreltally.web.PageRequest;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** What the owner sets for the farm. */
@Path("/api/settings")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Settings")
public class SettingsApi {

  private static final String WHOLE =
      """
      {"maker": "Oxnoddle Hill Sugarhouse", "address": ["12 Oxnoddle Hill", "Fernby"],
       "timeZone": "America/New_York", "currency": "USD", "unitHabit": "us",
       "jurisdiction": "us-federal", "netContentsRegime": "us",
       "instruments": {"platformScale": {"value": 0.5, "unit": "lb"},
         "dipstick": {"value": 0.5, "unit": "gal"}, "benchScale": {"value": 1, "unit": "g"},
         "hydrometer": {"value": 0.3, "unit": "Brix"},
         "refractometer": {"value": 0.2, "unit": "Brix"},
         "probe": {"value": 2, "unit": "degF"}, "colorMeter": 4},
       "cappingTemperature": {"value": 180, "unit": "degF"}, "bestByMonths": 24,
       "suppliesRule": "warn",
       "sugarhouse": {"tankGaugePercent": 5, "sapBrix": {"value": 0.2, "unit": "Brix"},
         "barometer": {"value": 2, "unit": "hPa"},
         "drawOffElevation": {"value": 7.1, "unit": "degF"}}}
      """;

  private final FarmSettings settings;

  SettingsApi(FarmSettings settings) {
    this.settings = settings;
  }

  @GET
  @Operation(
      summary = "All settings as they hold, now or at an instant",
      description = "Past papers are printed by the settings of their own time.")
  @APIResponse(
      responseCode = "200",
      description = "The settings",
      content =
          @Content(
              schema = @Schema(implementation = MakerSettings.class),
              examples = @ExampleObject(name = "an invented farm", value = WHOLE)))
  public MakerSettings read(
      @Parameter(
              description = "An instant (RFC 3339); left out: now",
              example = "2026-06-20T12:00:00Z")
          @QueryParam("at")
          String at) {
    return at == null ? settings.now().said() : settings.at(instant(at)).said();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @RolesAllowed("owner")
  @Operation(
      summary = "Change settings, from now or from an instant to come",
      description =
          "Send only what changes. An empty publicAddress or labelSheet and bestByMonths of 0 take"
              + " them away. Nothing is overwritten, and no change begins in the past.")
  @APIResponse(
      responseCode = "200",
      description = "All settings as they hold from then",
      content =
          @Content(
              schema = @Schema(implementation = MakerSettings.class),
              examples = @ExampleObject(name = "an invented farm", value = WHOLE)))
  public MakerSettings change(
      @RequestBody(
              content =
                  @Content(
                      examples =
                          @ExampleObject(
                              name = "name, zone and a better scale",
                              value =
                                  """
                                  {"maker": "Oxnoddle Hill Sugarhouse",
                                   "address": ["12 Oxnoddle Hill", "Fernby"],
                                   "timeZone": "America/New_York",
                                   "instruments": {"benchScale": {"value": 0.5, "unit": "g"}}}
                                  """)))
          SettingsChange change) {
    return settings.change(change);
  }

  @GET
  @Path("/history")
  @Operation(summary = "Every change of a setting, the last recorded first")
  @APIResponse(
      responseCode = "200",
      description = "A part of the history",
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "one change",
                      value =
                          """
                          {"items": [{"id": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3d",
                            "name": "instruments.benchScale", "value": {"value": 0.5, "unit": "g"},
                            "validFrom": "2026-06-01T00:00:00Z",
                            "recordedAt": "2026-05-20T14:10:00Z",
                            "recordedBy": "01980f3a-6a3e-7b52-8f4e-3d1f6a1b2c3e"}]}
                          """)))
  public Page<SettingRecord> history(
      @QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest page = PageRequest.of(limit, after);
    return page.page(
        settings.history(page.after(UUID::fromString).orElse(null), page.limit() + 1),
        change -> change.id().toString());
  }

  private static Instant instant(String text) {
    try {
      return OffsetDateTime.parse(text).toInstant();
    } catch (DateTimeException e) {
      throw new InvalidField("at", "Give an instant such as 2026-06-20T12:00:00Z.");
    }
  }
}
