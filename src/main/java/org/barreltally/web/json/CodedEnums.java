package org.barreltally.web.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.VersionUtil;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.Serializers;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.Map;

/** An enumeration whose constants have a {@code String code()} is written and read by it. */
final class CodedEnums extends SimpleModule {

  CodedEnums() {
    super("coded-enums", VersionUtil.parseVersion("1", "org.barreltally", "coded-enums"));
  }

  @Override
  public void setupModule(SetupContext context) {
    super.setupModule(context);
    context.addDeserializers(new Readers());
    context.addSerializers(new Writers());
    context.addKeySerializers(new KeyWriters());
  }

  private static boolean isCoded(Class<?> type) {
    if (!Enum.class.isAssignableFrom(type)) {
      return false;
    }
    try {
      return type.getMethod("code").getReturnType() == String.class;
    } catch (NoSuchMethodException e) {
      return false;
    }
  }

  private static String code(Object constant) {
    try {
      Method code = ((Enum<?>) constant).getDeclaringClass().getMethod("code");
      code.trySetAccessible();
      return (String) code.invoke(constant);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(constant + " does not tell its code", e);
    }
  }

  private static final class Readers extends Deserializers.Base {
    @Override
    public JsonDeserializer<?> findEnumDeserializer(
        Class<?> type, DeserializationConfig config, BeanDescription description) {
      return isCoded(type) ? reader(type) : null;
    }

    private static <T> JsonDeserializer<T> reader(Class<T> type) {
      Map<String, T> byCode = new LinkedHashMap<>();
      for (T constant : type.getEnumConstants()) {
        byCode.put(code(constant), constant);
      }
      return new StrictText<>(
          type,
          text -> {
            if (!byCode.containsKey(text)) {
              throw new IllegalArgumentException("no such code");
            }
            return byCode.get(text);
          },
          "Give one of " + String.join(", ", byCode.keySet()) + ".");
    }
  }

  private static final class Writers extends Serializers.Base {
    @Override
    public JsonSerializer<?> findSerializer(
        SerializationConfig config, JavaType type, BeanDescription description) {
      return isCoded(type.getRawClass()) ? new Writer(false) : null;
    }
  }

  private static final class KeyWriters extends Serializers.Base {
    @Override
    public JsonSerializer<?> findSerializer(
        SerializationConfig config, JavaType type, BeanDescription description) {
      return isCoded(type.getRawClass()) ? new Writer(true) : null;
    }
  }

  private static final class Writer extends StdSerializer<Object> {
    private final boolean asKey;

    Writer(boolean asKey) {
      super(Object.class);
      this.asKey = asKey;
    }

    @Override
    public void serialize(Object value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      if (asKey) {
        json.writeFieldName(code(value));
      } else {
        json.writeString(code(value));
      }
    }
  }
}
