package org.barreltally.shows.pages;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.barreltally.measure.Quantity;
import org.barreltally.pricing.Money;
import org.barreltally.shows.Booking;
import org.barreltally.shows.Booth;
import org.barreltally.shows.DayOrTime;
import org.barreltally.web.pages.Form;
import org.barreltally.web.pages.PageFarm;

/**
 * A booking as its form sends it: the fields of {@link Booking} with days as text, each with a time
 * of day in a field of its own where the hour matters.
 */
record BookingShape(
    String name,
    String town,
    String starts,
    String ends,
    String setUp,
    Booking.Organiser organiser,
    String appliedOn,
    By deadlines,
    Booth booth,
    String tableKit,
    List<String> kitItems,
    String helper,
    String vehicle,
    Quantity vehicleLoad,
    String priceList,
    List<String> papers,
    @JsonProperty("float") Money cashFloat,
    String rainPlan,
    Integer visitorsExpected,
    BigDecimal hoursOpen,
    Money travelCost,
    Money helperPay,
    String notes,
    String state,
    Boolean allowOverlap) {

  /** By when something is due. */
  record By(String apply, String pay) {}

  private static final String HOUR = ".hour";
  private static final List<String> DAYS = List.of("setUp", "deadlines.apply", "deadlines.pay");
  private static final List<String> FIELDS =
      List.of(
          "setUp",
          "organiser",
          "appliedOn",
          "deadlines",
          "booth",
          "tableKit",
          "kitItems",
          "helper",
          "vehicle",
          "vehicleLoad",
          "priceList",
          "papers",
          "float",
          "rainPlan",
          "visitorsExpected",
          "hoursOpen",
          "travelCost",
          "helperPay",
          "notes");

  /** Puts times of day to the days they were typed beside. */
  static ObjectNode withHours(ObjectNode json, MultivaluedMap<String, String> said, PageFarm farm) {
    for (String field : DAYS) {
      String hour = said.getFirst(field + HOUR);
      int dot = field.indexOf('.');
      if (hour != null
          && !hour.isBlank()
          && (dot < 0 ? json : json.path(field.substring(0, dot))) instanceof ObjectNode in) {
        String name = field.substring(dot + 1);
        if (in.hasNonNull(name)) {
          in.put(name, at(in.get(name).textValue(), hour.strip(), farm));
        }
      }
    }
    return json;
  }

  private static String at(String day, String hour, PageFarm farm) {
    try {
      LocalDateTime local = LocalDate.parse(day).atTime(LocalTime.parse(hour));
      Instant about = local.toInstant(java.time.ZoneOffset.UTC);
      return local.atZone(farm.zone(about)).toInstant().toString();
    } catch (DateTimeParseException e) {
      return day + "T" + hour;
    }
  }

  /** A field left blank is taken away: JSON Merge Patch says so with null (RFC 7396). */
  static ObjectNode withNulls(ObjectNode json) {
    FIELDS.stream().filter(field -> !json.has(field)).forEach(json::putNull);
    nulls(json, "organiser", "name", "contact");
    nulls(json, "deadlines", "apply", "pay");
    nulls(json, "booth", "fee", "percentOfSales", "deposit", "tables");
    return json;
  }

  private static void nulls(ObjectNode json, String part, String... fields) {
    if (json.get(part) instanceof ObjectNode in) {
      for (String field : fields) {
        if (!in.has(field)) {
          in.putNull(field);
        }
      }
    }
  }

  /** The form with all that is booked. */
  static Form filled(Booking booked, int version, PageFarm farm) {
    Filled filled = new Filled(farm);
    filled.put("version", version);
    filled.put("name", booked.name());
    filled.put("town", booked.town());
    filled.put("starts", booked.starts());
    filled.put("ends", booked.ends());
    filled.day("setUp", booked.setUp());
    filled.put("appliedOn", booked.appliedOn());
    if (booked.organiser() != null) {
      filled.put("organiser.name", booked.organiser().name());
      filled.put("organiser.contact", booked.organiser().contact());
    }
    if (booked.deadlines() != null) {
      filled.day("deadlines.apply", booked.deadlines().apply());
      filled.day("deadlines.pay", booked.deadlines().pay());
    }
    filled.booth(booked.booth());
    filled.put("tableKit", booked.tableKit());
    filled.list("kitItems", booked.kitItems());
    filled.put("helper", booked.helper());
    filled.put("vehicle", booked.vehicle());
    if (booked.vehicleLoad() != null) {
      filled.put("vehicleLoad", booked.vehicleLoad().value().toPlainString());
      filled.put("vehicleLoad.unit", booked.vehicleLoad().unit().code());
    }
    filled.put("priceList", booked.priceList());
    filled.list("papers", booked.papers());
    filled.money("float", booked.cashFloat());
    filled.put("rainPlan", booked.rainPlan());
    filled.put("visitorsExpected", booked.visitorsExpected());
    filled.put("hoursOpen", booked.hoursOpen());
    filled.money("travelCost", booked.travelCost());
    filled.money("helperPay", booked.helperPay());
    filled.put("notes", booked.notes());
    return Form.with(filled.pairs.toArray());
  }

  /** Fields and what stands in them, in turns. */
  private static final class Filled {
    private final List<Object> pairs = new ArrayList<>();
    private final PageFarm farm;

    Filled(PageFarm farm) {
      this.farm = farm;
    }

    void put(String field, Object value) {
      if (value != null) {
        pairs.add(field);
        pairs.add(value instanceof BigDecimal number ? number.toPlainString() : value.toString());
      }
    }

    void money(String field, Money money) {
      put(field, money == null ? null : money.amount());
    }

    void list(String field, List<String> lines) {
      for (int n = 0; lines != null && n < lines.size(); n++) {
        put(field + "[" + n + "]", lines.get(n));
      }
    }

    void day(String field, DayOrTime when) {
      if (when != null && when.at() != null) {
        LocalDateTime local = when.at().atZone(farm.zone(when.at())).toLocalDateTime();
        put(field, local.toLocalDate());
        put(field + HOUR, local.toLocalTime().truncatedTo(ChronoUnit.MINUTES));
      } else if (when != null) {
        put(field, when.day());
      }
    }

    void booth(Booth booth) {
      if (booth == null) {
        return;
      }
      money("booth.fee", booth.fee());
      put("booth.percentOfSales", booth.percentOfSales());
      money("booth.deposit", booth.deposit());
      for (int n = 0; n < booth.tables().size(); n++) {
        String row = "booth.tables[" + n + "].";
        put(row + "lengthInches", booth.tables().get(n).lengthInches());
        put(row + "depthInches", booth.tables().get(n).depthInches());
        put(row + "tiers", booth.tables().get(n).tiers());
      }
    }
  }
}
