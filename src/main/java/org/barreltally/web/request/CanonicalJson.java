package org.barreltally.web.request;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.TextNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.TreeMap;

/**
 * Says whether two requests mean the same: names sorted, numbers without needless zeros (1.0 and
 * 1.00 are one number), what is null counts as absent, order within lists kept.
 */
@ApplicationScoped
public class CanonicalJson {

  private final ObjectMapper mapper;

  @Inject
  CanonicalJson(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  /** SHA-256 of the canonical text, 32 bytes. */
  public byte[] hash(Object request) {
    try {
      return MessageDigest.getInstance("SHA-256")
          .digest(text(request).getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  String text(Object request) {
    StringBuilder text = new StringBuilder();
    write(mapper.valueToTree(request), text);
    return text.toString();
  }

  private static void write(JsonNode node, StringBuilder text) {
    if (node.isObject()) {
      writeObject(node, text);
    } else if (node.isArray()) {
      writeArray(node, text);
    } else if (node.isNumber()) {
      text.append(number(node.decimalValue()));
    } else {
      text.append(node);
    }
  }

  private static void writeObject(JsonNode node, StringBuilder text) {
    TreeMap<String, JsonNode> sorted = new TreeMap<>();
    for (var field : node.properties()) {
      if (!field.getValue().isNull()) {
        sorted.put(field.getKey(), field.getValue());
      }
    }
    char before = '{';
    for (var field : sorted.entrySet()) {
      text.append(before).append(TextNode.valueOf(field.getKey())).append(':');
      write(field.getValue(), text);
      before = ',';
    }
    text.append(sorted.isEmpty() ? "{}" : "}");
  }

  private static void writeArray(JsonNode node, StringBuilder text) {
    char before = '[';
    for (JsonNode item : node) {
      text.append(before);
      write(item, text);
      before = ',';
    }
    text.append(node.isEmpty() ? "[]" : "]");
  }

  private static String number(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toString();
  }
}
