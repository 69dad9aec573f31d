package org.barreltally.web.pages;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barreltally.measure.Pressure;
import org.barreltally.measure.PressureUnit;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/**
 * Text by field as the JSON that a record is read from. What a number's field holds is read as a
 * number, with a point or a comma, and with a unit typed behind it; all that are none are refused
 * together.
 */
final class FormJson {

  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile(
          "([-+]?[0-9][0-9 \u00a0\u202f]*(?:[.,][0-9]+)?|[-+]?[.,][0-9]+)\\s*([A-Za-z°é ]*)");
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private final Map<String, String> typed;
  private final PageFarm farm;
  private final List<FieldError> misread = new ArrayList<>();

  FormJson(Map<String, String> typed, PageFarm farm) {
    this.typed = typed;
    this.farm = farm;
  }

  /**
   * The JSON of a record; an empty object where nothing was typed.
   *
   * @throws InvalidField naming every field whose number cannot be read
   */
  ObjectNode of(Class<?> record) {
    ObjectNode json = object(record, "");
    if (!misread.isEmpty()) {
      throw new InvalidField(misread);
    }
    return json;
  }

  private ObjectNode object(Class<?> record, String prefix) {
    ObjectNode object = JSON.objectNode();
    for (RecordComponent part : record.getRecordComponents()) {
      String name = name(part);
      JsonNode value = value(part.getGenericType(), prefix + name);
      if (value != null) {
        object.set(name, value);
      }
    }
    return object;
  }

  /** Its name in the JSON, which is another where Java keeps the word for itself. */
  private static String name(RecordComponent part) {
    JsonProperty named = part.getAccessor().getAnnotation(JsonProperty.class);
    return named == null || named.value().isEmpty() ? part.getName() : named.value();
  }

  private JsonNode value(Type type, String field) {
    Class<?> kind = raw(type);
    if (List.class.isAssignableFrom(kind)) {
      return list(((ParameterizedType) type).getActualTypeArguments()[0], field);
    }
    if (Map.class.isAssignableFrom(kind)) {
      return map(((ParameterizedType) type).getActualTypeArguments()[1], field);
    }
    if (kind == Quantity.class || kind == Pressure.class) {
      return quantity(field);
    }
    if (kind == Money.class) {
      return money(field);
    }
    if (kind.isRecord()) {
      ObjectNode nested = object(kind, field + ".");
      return nested.isEmpty() ? null : nested;
    }
    String text = typed.get(field);
    if (text == null) {
      return null;
    }
    if (kind == Boolean.class || kind == boolean.class) {
      return truth(text);
    }
    if (kind == Instant.class) {
      return JSON.textNode(instant(text));
    }
    return isNumber(kind) ? number(text, field) : JSON.textNode(text);
  }

  private JsonNode list(Type of, String field) {
    ArrayNode list = JSON.arrayNode();
    Class<?> kind = raw(of);
    for (int n = 0; isTyped(field + "[" + n + "]"); n++) {
      String row = field + "[" + n + "]";
      list.add(
          kind.isRecord() && kind != Quantity.class && kind != Money.class
              ? object(kind, row + ".")
              : value(of, row));
    }
    return list.isEmpty() ? null : list;
  }

  /** Values by key: {@code prices.amber}. */
  private JsonNode map(Type of, String field) {
    ObjectNode map = JSON.objectNode();
    typed.keySet().stream()
        .filter(name -> name.startsWith(field + "."))
        .map(name -> name.substring(field.length() + 1).split("\\.", 2)[0])
        .distinct()
        .forEach(
            key -> {
              JsonNode value = value(of, field + "." + key);
              if (value != null) {
                map.set(key, value);
              }
            });
    return map.isEmpty() ? null : map;
  }

  private boolean isTyped(String prefix) {
    return typed.keySet().stream()
        .anyMatch(field -> field.equals(prefix) || field.startsWith(prefix + "."));
  }

  private JsonNode quantity(String field) {
    String text = typed.get(field);
    if (text == null) {
      return null;
    }
    ObjectNode quantity = JSON.objectNode();
    Matcher both = NUMBER_AND_UNIT.matcher(text);
    String unit = typed.get(field + ".unit");
    if (both.matches() && !both.group(2).isBlank()) {
      unit = unitTyped(both.group(2).strip());
      text = both.group(1);
    }
    quantity.set("value", number(text, field));
    quantity.put("unit", unit);
    return quantity;
  }

  private static String unitTyped(String said) {
    String plain = said.replace(" ", "").replace(".", "");
    for (Unit unit : Unit.values()) {
      if (unit.code().equalsIgnoreCase(plain)) {
        return unit.code();
      }
    }
    for (PressureUnit unit : PressureUnit.values()) {
      if (unit.code().equalsIgnoreCase(plain)) {
        return unit.code();
      }
    }
    return switch (plain.toLowerCase(java.util.Locale.ROOT)) {
      case "lbs" -> Unit.LB.code();
      case "°f", "f" -> Unit.DEGF.code();
      case "°c", "c" -> Unit.DEGC.code();
      case "°bx", "bx" -> Unit.BRIX.code();
      case "°bé", "bé", "be" -> Unit.BAUME.code();
      default -> said;
    };
  }

  private JsonNode money(String field) {
    String text = typed.get(field);
    if (text == null) {
      return null;
    }
    ObjectNode money = JSON.objectNode();
    money.set("amount", number(text.replaceAll("^[$€£]\\s*|\\s*[$€£]$", ""), field));
    money.put("currency", typed.getOrDefault(field + ".currency", farm.currency()));
    return money;
  }

  private JsonNode number(String text, String field) {
    Matcher both = NUMBER_AND_UNIT.matcher(text);
    if (!both.matches() || !both.group(2).isBlank()) {
      misread.add(new FieldError(field, Words.of("common.no-number", text)));
      return null;
    }
    String plain = both.group(1).replaceAll("[ \u00a0\u202f+]", "").replace(',', '.');
    // A whole number stays one, for resources that take no others where pieces are counted.
    return plain.contains(".")
        ? JSON.numberNode(new BigDecimal(plain))
        : JSON.numberNode(new BigInteger(plain));
  }

  private static JsonNode truth(String text) {
    return switch (text) {
      case "true", "on" -> JSON.booleanNode(true);
      case "false" -> JSON.booleanNode(false);
      default -> JSON.textNode(text);
    };
  }

  /** A time without a zone is by the farm's clock. */
  private String instant(String text) {
    try {
      LocalDateTime local = LocalDateTime.parse(text);
      Instant about = local.toInstant(java.time.ZoneOffset.UTC);
      return local.atZone(farm.zone(about)).toInstant().toString();
    } catch (DateTimeParseException e) {
      return text;
    }
  }

  private static boolean isNumber(Class<?> kind) {
    return Number.class.isAssignableFrom(kind)
        || kind == int.class
        || kind == long.class
        || kind == double.class;
  }

  private static Class<?> raw(Type type) {
    return type instanceof ParameterizedType of ? (Class<?>) of.getRawType() : (Class<?>) type;
  }
}
