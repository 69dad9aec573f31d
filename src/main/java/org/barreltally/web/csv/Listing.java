package org.barreltally.web.csv;

import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.ws.rs.QueryParam;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A method of a resource that answers a list: a record with a list called {@code items}.
 *
 * @param item what one of the items is
 * @param items reads them from an answer
 * @param next reads from an answer what to send as {@code after} for the part that follows; null
 *     where the list always comes whole
 * @param limitAt which parameter takes {@code limit}; below zero where none does
 * @param afterAt which parameter takes {@code after}; below zero where none does
 */
record Listing(JavaType item, Method items, Method next, int limitAt, int afterAt) {

  private static final String ITEMS = "items";

  /** The listing that a method answers, or empty if it answers something else. */
  static Optional<Listing> of(Method method, ObjectMapper mapper) {
    JavaType answered = mapper.constructType(method.getGenericReturnType());
    RecordComponent[] components = answered.getRawClass().getRecordComponents();
    if (components == null) {
      return Optional.empty();
    }
    Optional<RecordComponent> items = named(components, ITEMS);
    if (items.isEmpty() || !List.class.isAssignableFrom(items.get().getType())) {
      return Optional.empty();
    }
    JavaType list =
        mapper
            .getTypeFactory()
            .resolveMemberType(items.get().getGenericType(), answered.getBindings());
    return Optional.of(
        new Listing(
            list.getContentType(),
            reader(items.get()),
            named(components, "next").map(Listing::reader).orElse(null),
            parameter(method, "limit"),
            parameter(method, "after")));
  }

  List<?> itemsOf(Object answer) {
    return (List<?>) read(items, answer);
  }

  /** What follows an answer; null at the end. */
  String nextOf(Object answer) {
    return next == null ? null : (String) read(next, answer);
  }

  /** Whether its parts can be asked for one after the other. */
  boolean inParts() {
    return next != null && limitAt >= 0 && afterAt >= 0;
  }

  private static Optional<RecordComponent> named(RecordComponent[] components, String name) {
    return Arrays.stream(components).filter(c -> c.getName().equals(name)).findFirst();
  }

  private static Method reader(RecordComponent component) {
    Method reader = component.getAccessor();
    reader.trySetAccessible();
    return reader;
  }

  private static int parameter(Method method, String name) {
    Parameter[] parameters = method.getParameters();
    for (int i = 0; i < parameters.length; i++) {
      QueryParam query = parameters[i].getAnnotation(QueryParam.class);
      if (query != null && query.value().equals(name) && parameters[i].getType() == String.class) {
        return i;
      }
    }
    return -1;
  }

  private static Object read(Method reader, Object answer) {
    try {
      return reader.invoke(answer);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(answer.getClass() + " is no list", e);
    }
  }
}
