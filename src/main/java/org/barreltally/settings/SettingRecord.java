package org.barreltally.settings;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.UUID;

/**
 * One change of one setting.
 *
 * @param name as in the interface, an instrument as {@code instruments.benchScale}
 * @param value as the owner said it
 */
public record SettingRecord(
    UUID id, String name, JsonNode value, Instant validFrom, Instant recordedAt, UUID recordedBy) {}
