package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.barreltally.web.access.FormToken;
import org.barreltally.web.problem.Problem;

/**
 * A form as it is shown: what was typed, and after a refusal what to mend beside each field. A
 * field is named by its path in the JSON of the interface, {@code draws[0].weight}, and refusals
 * name fields the same way. The form's id goes with what it sends, so that a second click, or the
 * back button and another click, does it once.
 */
@TemplateData
public final class Form {

  private final String id;
  private final String mark;
  private final Map<String, String> typed;
  private final Problem refusal;

  private Form(String id, Map<String, String> typed, Problem refusal) {
    this(id, "f", typed, refusal);
  }

  private Form(String id, String mark, Map<String, String> typed, Problem refusal) {
    this.id = id;
    this.mark = mark;
    this.typed = typed;
    this.refusal = refusal;
  }

  /** A form nobody has typed in yet. */
  public static Form blank() {
    return new Form(UUID.randomUUID().toString(), Map.of(), null);
  }

  /** A form with what is known filled in: field and text, in turns. */
  public static Form with(Object... fieldsAndTexts) {
    Map<String, String> filled = new LinkedHashMap<>();
    for (int n = 0; n + 1 < fieldsAndTexts.length; n += 2) {
      if (fieldsAndTexts[n + 1] != null) {
        filled.put((String) fieldsAndTexts[n], Codes.of(fieldsAndTexts[n + 1]));
      }
    }
    return new Form(UUID.randomUUID().toString(), filled, null);
  }

  static Form typed(String id, Map<String, String> typed) {
    return new Form(id, typed, null);
  }

  /** The same form after a refusal. */
  Form refused(Problem problem) {
    return new Form(id, mark, typed, problem);
  }

  /** The same form with some fields emptied: what is secret is not sent back. */
  public Form without(String... fields) {
    Map<String, String> left = new LinkedHashMap<>(typed);
    left.keySet().removeAll(List.of(fields));
    return new Form(id, left, refusal);
  }

  public String id() {
    return id;
  }

  /** Why it was refused; null when it was not. */
  public Problem refusal() {
    return refusal;
  }

  /** What was typed in a field; empty when nothing was. */
  public String value(String field) {
    return typed.getOrDefault(field, "");
  }

  /** What was typed in a field, or what it begins with. */
  public String value(String field, Object start) {
    String begins = start == null ? "" : start.toString();
    return typed.getOrDefault(field, isTypedIn() ? "" : begins);
  }

  /** Whether a choice or box is taken. */
  public boolean is(String field, Object value, Object start) {
    return value(field, start).equals(Codes.of(value));
  }

  private boolean isTypedIn() {
    return !typed.isEmpty();
  }

  /** What to mend at a field; empty when nothing. */
  public String message(String field) {
    if (refusal == null) {
      return "";
    }
    return String.join(
        " ",
        refusal.errors().stream()
            .filter(error -> isAt(field, error.field()))
            .map(error -> Mends.of(error.message()))
            .distinct()
            .toList());
  }

  private static boolean isAt(String field, String named) {
    return named.equals(field)
        || named.equals(field + ".value")
        || named.equals(field + ".unit")
        || named.equals(field + ".amount")
        || named.equals(field + ".currency");
  }

  /** What to mend at a field and at all that lie under it: {@code draws[0]} and its weight. */
  public String messageUnder(String field) {
    if (refusal == null) {
      return "";
    }
    return String.join(
        " ",
        refusal.errors().stream()
            .filter(
                error ->
                    error.field().equals(field)
                        || error.field().startsWith(field + ".")
                        || error.field().startsWith(field + "["))
            .map(error -> Mends.of(error.message()))
            .distinct()
            .toList());
  }

  /** Everything that was typed, for a page that repeats it and sends it again. */
  public Map<String, String> kept() {
    Map<String, String> kept = new LinkedHashMap<>(typed);
    kept.keySet().removeAll(List.of(FormToken.FIELD, FormToken.RESUMED, "form"));
    return kept;
  }

  public boolean isWrong(String field) {
    return !message(field).isEmpty();
  }

  /** The same form on a page with others, so that no two fields of the page have the same id. */
  Form marked(String name) {
    return new Form(id, "f-" + name, typed, refusal);
  }

  /** Where on the page a field stands: its id in the HTML. */
  public String anchor(String field) {
    return mark
        + "-"
        + field.replaceAll("\\.(value|unit|amount|currency)$", "").replaceAll("[^A-Za-z0-9]+", "-");
  }

  /** The numbers of the rows a list of fields shows: those typed in, and at least so many. */
  public List<Integer> rows(String list, int least) {
    Pattern row = Pattern.compile(Pattern.quote(list) + "\\[(\\d{1,4})].*");
    int typedIn =
        typed.keySet().stream()
            .map(row::matcher)
            .filter(Matcher::matches)
            .mapToInt(field -> Integer.parseInt(field.group(1)) + 1)
            .max()
            .orElse(0);
    return IntStream.range(0, Math.max(least, typedIn)).boxed().toList();
  }

  /** The name of a field in a part of what is sent: {@code prices.amber}. */
  public String part(String record, String field) {
    return record + "." + field;
  }

  /** The name of a row as a whole: {@code draws[2]}. */
  public String row(String list, int number) {
    return list + "[" + number + "]";
  }

  /** The name of a field in a row: {@code draws[2].weight}. */
  public String row(String list, int number, String field) {
    return list + "[" + number + "]." + field;
  }

  /** The name of a row that is one field: {@code papers[2]}. */
  public String item(String list, int number) {
    return list + "[" + number + "]";
  }
}
