package org.barreltally.settings.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.Map;
import org.barreltally.settings.SettingRecord;
import org.barreltally.settings.SettingsChange;

/** Takes a change apart into its settings by name, and puts one setting into a change again. */
@ApplicationScoped
public class SettingsJson {

  private static final String INSTRUMENTS = "instruments";
  private static final String VALID_FROM = "validFrom";

  private final ObjectMapper mapper;

  SettingsJson(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** Names and values; an instrument's name is {@code instruments.benchScale}. */
  Map<String, JsonNode> settings(SettingsChange change) {
    Map<String, JsonNode> settings = new LinkedHashMap<>();
    JsonNode whole = value(written(change));
    whole
        .properties()
        .forEach(
            field -> {
              if (field.getKey().equals(INSTRUMENTS)) {
                field
                    .getValue()
                    .properties()
                    .forEach(one -> settings.put(INSTRUMENTS + "." + one.getKey(), one.getValue()));
              } else if (!field.getKey().equals(VALID_FROM)) {
                settings.put(field.getKey(), field.getValue());
              }
            });
    return settings;
  }

  SettingsChange change(SettingRecord row) {
    ObjectNode whole = mapper.createObjectNode();
    String[] path = row.name().split("\\.", 2);
    ObjectNode parent = path.length == 2 ? whole.putObject(path[0]) : whole;
    parent.set(path[path.length - 1], row.value());
    whole.put(VALID_FROM, row.validFrom().toString());
    try {
      return mapper.readValue(whole.toString(), SettingsChange.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("the setting " + row.name() + " cannot be read", e);
    }
  }

  JsonNode value(String json) {
    try {
      return mapper.readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a stored setting cannot be read", e);
    }
  }

  private String written(SettingsChange change) {
    try {
      return mapper.writeValueAsString(change);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a change of settings cannot be written", e);
    }
  }
}
