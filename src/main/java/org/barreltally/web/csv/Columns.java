package org.barreltally.web.csv;

import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.jsonFormatVisitors.JsonFormatVisitorWrapper;
import com.fasterxml.jackson.databind.jsonFormatVisitors.JsonObjectFormatVisitor;
import com.fasterxml.jackson.databind.ser.BeanPropertyWriter;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Finds the columns of a kind of item from its type, not from its values: a list without items has
 * the same columns as a full one. The writer of JSON is asked, so the fields are exactly those of
 * the JSON, by their names there.
 */
final class Columns {

  private final List<Column> found = new ArrayList<>();
  private final Deque<JavaType> within = new ArrayDeque<>();

  private Columns() {}

  /** At least one, in the order of the fields. */
  static List<Column> of(JavaType item, ObjectMapper mapper) {
    Columns columns = new Columns();
    Column whole = new Column(List.of());
    try {
      Looking looking = columns.new Looking(whole);
      mapper.acceptJsonFormatVisitor(item, looking);
      if (!looking.hasFields) {
        columns.found.add(whole);
      }
    } catch (JsonMappingException e) {
      throw new IllegalStateException(item + " cannot be written", e);
    }
    return List.copyOf(columns.found);
  }

  /** Learns whether a value is an object with fields, and then looks at each of them. */
  private final class Looking extends JsonFormatVisitorWrapper.Base {
    private final Column column;
    private boolean hasFields;

    private Looking(Column column) {
      this.column = column;
    }

    @Override
    public JsonObjectFormatVisitor expectObjectFormat(JavaType type) {
      hasFields = true;
      return new Fields(column, getProvider());
    }
  }

  private final class Fields extends JsonObjectFormatVisitor.Base {
    private final Column column;

    private Fields(Column column, SerializerProvider provider) {
      super(provider);
      this.column = column;
    }

    @Override
    public void property(BeanProperty field) throws JsonMappingException {
      optionalProperty(field);
    }

    @Override
    public void optionalProperty(BeanProperty field) throws JsonMappingException {
      Column deeper = column.within(field.getName());
      Looking looking = new Looking(deeper);
      looking.setProvider(getProvider());
      JavaType type = field.getType();
      if (!within.contains(type)) { // what holds its own kind is one cell
        within.push(type);
        writer(field).acceptJsonFormatVisitor(looking, type);
        within.pop();
      }
      if (!looking.hasFields) {
        found.add(deeper);
      }
    }

    private JsonSerializer<?> writer(BeanProperty field) throws JsonMappingException {
      if (field instanceof BeanPropertyWriter known && known.getSerializer() != null) {
        return known.getSerializer();
      }
      return getProvider().findValueSerializer(field.getType(), field);
    }
  }
}
