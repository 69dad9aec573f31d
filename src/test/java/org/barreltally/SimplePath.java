package org.barreltally;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A path into JSON made of names and indexes alone, such as {@code errors[0].field}, with {@code
 * size()} or {@code toDouble()} at its end; what it leads to is what REST Assured finds there.
 */
final class SimplePath {

  private static final String NAME = "[A-Za-z_][A-Za-z0-9_]*";
  private static final Pattern PATH =
      Pattern.compile(NAME + "(\\[\\d+])?(\\." + NAME + "(\\[\\d+])?)*(\\.(size|toDouble)\\(\\))?");
  private static final Pattern STEP = Pattern.compile("(" + NAME + ")(\\(\\))?|\\[(\\d+)]");

  /** Names that every object has, whatever JSON says. */
  private static final List<String> NOT_OURS = List.of("class", "metaClass", "properties");

  private SimplePath() {}

  /** Something found, perhaps null. */
  record Found(Object value) {}

  /** What a path leads to; empty where it is not simple, or leads through something unusual. */
  static Optional<Found> in(Object root, String path) {
    if (!PATH.matcher(path).matches()) {
      return Optional.empty();
    }
    Object at = root;
    Matcher steps = STEP.matcher(path);
    while (steps.find()) {
      Optional<Found> next = step(at, steps.group(1), steps.group(2) != null, steps.group(3));
      if (next.isEmpty()) {
        return next;
      }
      at = next.get().value();
    }
    return Optional.of(new Found(at));
  }

  private static Optional<Found> step(Object at, String name, boolean call, String index) {
    if (index != null) {
      int n = Integer.parseInt(index);
      return at instanceof List<?> list && n < list.size()
          ? Optional.of(new Found(list.get(n)))
          : Optional.empty();
    }
    if (call) {
      return called(at, name);
    }
    if (NOT_OURS.contains(name)) {
      return Optional.empty();
    }
    if (at instanceof Map<?, ?> map) {
      return Optional.of(new Found(map.get(name)));
    }
    return at instanceof List<?> list ? each(list, name) : Optional.empty();
  }

  private static Optional<Found> called(Object at, String name) {
    if (name.equals("size") && at instanceof List<?> list) {
      return Optional.of(new Found(list.size()));
    }
    return name.equals("toDouble") && at instanceof Number number
        ? Optional.of(new Found(number.doubleValue()))
        : Optional.empty();
  }

  private static Optional<Found> each(List<?> list, String name) {
    List<Object> values = new ArrayList<>();
    for (Object one : list) {
      if (!(one instanceof Map<?, ?> map)) {
        return Optional.empty();
      }
      values.add(map.get(name));
    }
    return Optional.of(new Found(values));
  }
}
