package org.barreltally.hostile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Spoils what is valid, from a seed. */
final class Mischief {

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Texts that have hurt programs: quotes, markup, paths, controls, scripts of all sorts. */
  static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "\u0000",
          "a\u0000b",
          "\u0007\u001b[31m",
          "'; DROP TABLE lots; --",
          "' OR '1'='1",
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "{{7*7}}${7*7}#{7*7}",
          "../../../../etc/passwd",
          "..%2f..%2fetc%2fpasswd",
          "C:\\Windows\\system32",
          "%00",
          "%s%n%x",
          "\uD800",
          "\uDFFFx",
          "\u202Eevil",
          "e\u0301\u0301\u0301\u0301\u0301",
          "\u200B\u200D\uFEFF",
          "\uD83C\uDF41 sirop d'\u00E9rable",
          "\u0634\u0631\u0627\u0628",
          "\u0936\u0939\u0926",
          "\u6953\u7CD6\u6D46",
          "\r\nSet-Cookie: a=b",
          "=1+1",
          "@SUM(A1)",
          "null",
          "true",
          "NaN",
          "Infinity",
          "-0",
          "1e308",
          "1e-400",
          "99999999999999999999999999",
          "0.1234567890123456789",
          "1,5",
          "0x10",
          "\u0661\u0662\u0663",
          "2026-02-30",
          "0000-00-00",
          "9999-12-31",
          "+10000-01-01",
          "-0001-01-01",
          "2026-06-20T25:61:61Z",
          "2026-06-20T12:00:00+99:00",
          "00000000-0000-0000-0000-000000000000",
          "ffffffff-ffff-ffff-ffff-ffffffffffff",
          "a".repeat(300),
          "a".repeat(9_999),
          "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!",
          "((((((((((((((((((((((((((((((",
          "PT",
          "B-01",
          "cool-room");

  private static final List<String> RAW =
      List.of(
          "NaN",
          "-Infinity",
          "1e999999999",
          "-0",
          "-1",
          "0",
          "1E400",
          "0.0000000000001",
          "01",
          "+1",
          "1.",
          ".5",
          "123456789012345",
          "9223372036854775808",
          "2147483648",
          "null",
          "true",
          "[]",
          "{}",
          "[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]",
          "\"\\ud800\"",
          "\"\\u0000\"");

  private final Random random;

  Mischief(long seed) {
    random = new Random(seed);
  }

  boolean chance(double of) {
    return random.nextDouble() < of;
  }

  <T> T one(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  String text() {
    return chance(0.05) ? "x".repeat(random.nextInt(60_000)) : one(TEXTS);
  }

  /** JSON near to an example, with one to three things spoiled, or no JSON at all. */
  byte[] spoiled(JsonNode example) {
    if (chance(0.06)) {
      byte[] noise = new byte[random.nextInt(400)];
      random.nextBytes(noise);
      return noise;
    }
    JsonNode copy = example.deepCopy();
    for (int n = random.nextInt(3); n >= 0; n--) {
      spoil(copy);
    }
    String text = copy.toString();
    if (chance(0.25)) {
      text = rawly(text);
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (chance(0.04) && bytes.length > 2) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  /** Puts something into the text that a tree of JSON cannot hold. */
  private String rawly(String text) {
    List<Integer> values = new ArrayList<>();
    for (int at = text.indexOf(':'); at >= 0; at = text.indexOf(':', at + 1)) {
      values.add(at);
    }
    if (values.isEmpty()) {
      return text + one(RAW);
    }
    int at = one(values);
    return switch (random.nextInt(4)) {
      case 0 -> text.substring(0, at + 1) + one(RAW) + text.substring(end(text, at + 1));
      case 1 -> text.substring(0, at);
      case 2 -> "{\"on\": 1, \"on\": 2," + text.substring(1);
      default -> text + text;
    };
  }

  private static int end(String text, int from) {
    int at = from;
    while (at < text.length() && ",}]".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return at;
  }

  private void spoil(JsonNode node) {
    List<JsonNode> holders = new ArrayList<>();
    collect(node, holders);
    if (holders.isEmpty()) {
      return;
    }
    JsonNode holder = one(holders);
    if (holder instanceof ObjectNode object) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      if (names.isEmpty() || chance(0.1)) {
        object.set(chance(0.5) ? "unknown" : text(), value());
      } else if (chance(0.2)) {
        object.remove(one(names));
      } else {
        object.set(one(names), value());
      }
    } else if (holder instanceof ArrayNode array) {
      if (chance(0.1)) {
        JsonNode first = array.isEmpty() ? value() : array.get(0);
        for (int n = random.nextInt(3_000); n > 0; n--) {
          array.add(first);
        }
      } else if (array.isEmpty() || chance(0.4)) {
        array.add(value());
      } else {
        array.set(random.nextInt(array.size()), value());
      }
    }
  }

  private static void collect(JsonNode node, List<JsonNode> holders) {
    if (node.isContainerNode()) {
      holders.add(node);
      node.forEach(child -> collect(child, holders));
    }
  }

  private JsonNode value() {
    return switch (random.nextInt(12)) {
      case 0 -> JSON.nullNode();
      case 1 -> JSON.getNodeFactory().booleanNode(random.nextBoolean());
      case 2 -> JSON.getNodeFactory().numberNode(random.nextInt());
      case 3 -> JSON.getNodeFactory().numberNode(random.nextLong());
      case 4 -> JSON.getNodeFactory().numberNode(random.nextGaussian() * 1e6);
      case 5 -> JSON.createArrayNode();
      case 6 -> JSON.createObjectNode();
      case 7 -> JSON.createObjectNode().put("value", random.nextInt(1000)).put("unit", one(UNITS));
      case 8 -> JSON.getNodeFactory().numberNode(random.nextInt(20) - 3);
      default -> JSON.getNodeFactory().textNode(text());
    };
  }

  private static final List<String> UNITS =
      List.of("lb", "kg", "g", "gal", "mL", "floz", "degF", "degC", "Brix", "Baume", "stone", "");
}
