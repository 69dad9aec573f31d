package org.barreltally.settings.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.inject.Inject;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.barreltally.measure.Jurisdiction;
import org.barreltally.settings.MakerSettings;
import org.barreltally.settings.NetContentsRegime;
import org.barreltally.settings.SettingRecord;
import org.barreltally.settings.SettingsChange;
import org.barreltally.settings.SupplyShortage;
import org.barreltally.settings.UnitHabit;
import org.barreltally.settings.rest.SettingsApi;
import org.barreltally.web.Page;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.Forms;
import org.barreltally.web.pages.MenuEntry;
import org.barreltally.web.pages.SheetChoices;
import org.eclipse.microprofile.openapi.annotations.Operation;

/** What the owner sets for the farm; everyone reads it. */
@Path("/settings")
@Produces(MediaType.TEXT_HTML)
@Blocking
public class SettingsPage implements MenuEntry {

  private static final String HISTORY_ROWS = "50";

  /** When the form was filled, so that only what was changed on it is sent on. */
  private static final String SHOWN_AT = "shownAt";

  private static final List<Group> GROUPS =
      List.of(
          new Group("maker", List.of("maker", "address", "publicAddress")),
          new Group("reckoning", List.of("timeZone", "currency", "unitHabit")),
          new Group("limits", List.of("jurisdiction", "netContentsRegime")),
          new Group(
              "instruments",
              List.of(
                  "instruments.platformScale",
                  "instruments.dipstick",
                  "instruments.benchScale",
                  "instruments.hydrometer",
                  "instruments.refractometer",
                  "instruments.probe",
                  "instruments.colorMeter")),
          new Group("canning", List.of("cappingTemperature", "suppliesRule")),
          new Group("labels", List.of("labelSheet", "bestByMonths")),
          new Group(
              "sugarhouse",
              List.of(
                  "sugarhouse.tankGaugePercent",
                  "sugarhouse.sapBrix",
                  "sugarhouse.barometer",
                  "sugarhouse.drawOffElevation")));

  private record Group(String code, List<String> settings) {}

  /** A setting as it holds. */
  @TemplateData
  public record Held(String name, String value) {}

  /** Settings that belong together. */
  @TemplateData
  public record Section(String words, List<Held> settings) {}

  /** A change that was recorded. */
  @TemplateData
  public record Changed(String name, String value, Instant validFrom, Instant recordedAt) {}

  /** What the form offers. */
  @TemplateData
  public record Choices(
      List<Choice> unitHabits,
      List<Choice> jurisdictions,
      List<Choice> regimes,
      List<Choice> sheets,
      List<Choice> shortages,
      List<String> zones) {}

  /**
   * What the page shows.
   *
   * @param next what the earlier changes come after; null at the end
   */
  @TemplateData
  public record Shown(List<Section> parts, List<Changed> history, String next, Choices choices) {}

  @CheckedTemplate(basePath = "settings")
  static class Templates {
    static native TemplateInstance settings(Shown shown, Form form);
  }

  private final SettingsApi settings;
  private final SheetChoices sheets;
  private final ObjectMapper mapper;
  private final Clock clock;
  private final Forms forms;

  @Inject
  SettingsPage(
      SettingsApi settings, SheetChoices sheets, ObjectMapper mapper, Clock clock, Forms forms) {
    this.settings = settings;
    this.sheets = sheets;
    this.mapper = mapper;
    this.clock = clock;
    this.forms = forms;
  }

  @GET
  @Operation(hidden = true)
  public TemplateInstance show(@QueryParam("after") String after) {
    return shown(filled(), after);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Operation(hidden = true)
  public Response change(MultivaluedMap<String, String> said) {
    return forms.take(
        said,
        SettingsChange.class,
        (key, typed) -> {
          MakerSettings before = settings.read(said.getFirst(SHOWN_AT));
          SettingsChange change = ChangedAlone.of(before, typed);
          if (!ChangedAlone.saysNothing(change)) {
            settings.change(change);
          }
          return URI.create("/settings");
        },
        form -> shown(form, null));
  }

  private Form filled() {
    Instant now = clock.instant();
    return SettingsForm.of(settings.read(now.toString()), SHOWN_AT, now);
  }

  private TemplateInstance shown(Form form, String after) {
    JsonNode whole = mapper.valueToTree(settings.read(null));
    Page<SettingRecord> history = settings.history(HISTORY_ROWS, after);
    return Templates.settings(
        new Shown(
            GROUPS.stream().map(group -> section(group, whole)).toList(),
            history.items().stream().map(SettingsPage::changed).toList(),
            history.next(),
            choices()),
        form);
  }

  private static Section section(Group group, JsonNode whole) {
    return new Section(
        "settings.group." + group.code(),
        group.settings().stream()
            .map(
                setting ->
                    new Held(
                        SettingText.name(setting),
                        SettingText.value(setting, whole.at("/" + setting.replace('.', '/')))))
            .toList());
  }

  private static Changed changed(SettingRecord one) {
    return new Changed(
        SettingText.name(one.name()),
        SettingText.value(one.name(), one.value()),
        one.validFrom(),
        one.recordedAt());
  }

  private Choices choices() {
    return new Choices(
        Choice.of(UnitHabit.values(), "settings.unitHabit"),
        Jurisdiction.all().stream().map(one -> new Choice(one.code(), one.name())).toList(),
        Choice.of(NetContentsRegime.values(), "settings.netContentsRegime"),
        sheets.choices(),
        Choice.of(SupplyShortage.values(), "settings.suppliesRule"),
        ZoneId.getAvailableZoneIds().stream()
            .filter(zone -> zone.matches("(Africa|America|Asia|Australia|Europe|Pacific)/.*"))
            .sorted()
            .toList());
  }

  @Override
  public String path() {
    return "/settings";
  }

  @Override
  public String words() {
    return "settings.title";
  }

  @Override
  public MenuEntry.Part part() {
    return MenuEntry.Part.HOUSE;
  }

  @Override
  public int order() {
    return 10;
  }
}
