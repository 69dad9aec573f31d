package org.barreltally.canning.pages;

import io.quarkus.qute.TemplateData;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barreltally.barrels.BarrelState;
import org.barreltally.barrels.rest.BarrelView;
import org.barreltally.containers.Container;
import org.barreltally.web.pages.Form;

/**
 * The form of a run: one line for every vessel that holds syrup and one for every size, most of
 * them left blank. A line's name is sent whether it is filled in or not, so lines that say no more
 * than their name are taken out before the form is read.
 */
public final class CanningForm {

  private static final Pattern ROW = Pattern.compile("((draws|fills)\\[\\d{1,4}])\\..*");
  private static final List<String> SAYS = List.of(".weight", ".all", ".count", ".broken", ".rest");

  private CanningForm() {}

  /** A vessel of the form and where its draw stands. */
  @TemplateData
  public record DrawRow(int n, BarrelView from, boolean heel) {

    public String at() {
      return "draws[" + n + "]";
    }

    /** The field that names it: a barrel, or a vessel that keeps a heel. */
    public String named() {
      return at() + (heel ? ".vessel" : ".barrel");
    }

    public String weight() {
      return at() + ".weight";
    }

    public String all() {
      return at() + ".all";
    }

    boolean holdsSyrup() {
      return from.state() != BarrelState.DRAINED;
    }
  }

  /** A size of the form and where its count stands. */
  @TemplateData
  public record FillRow(int n, Container size) {

    public String at() {
      return "fills[" + n + "]";
    }

    public String field(String name) {
      return at() + "." + name;
    }
  }

  /** What was said without the lines that were left blank. */
  static MultivaluedMap<String, String> filledIn(MultivaluedMap<String, String> said) {
    Set<String> rows = new HashSet<>();
    said.forEach(
        (field, values) -> {
          Matcher row = ROW.matcher(field);
          if (row.matches()
              && SAYS.contains(field.substring(row.group(1).length()))
              && values.stream().anyMatch(text -> !text.isBlank())) {
            rows.add(row.group(1));
          }
        });
    MultivaluedMap<String, String> kept = new MultivaluedHashMap<>();
    said.forEach(
        (field, values) -> {
          Matcher row = ROW.matcher(field);
          if (!row.matches() || rows.contains(row.group(1))) {
            kept.put(field, values);
          }
        });
    return kept;
  }

  /** The vessels with syrup in them, and any that was named although it has none. */
  static List<DrawRow> draws(Form form, List<BarrelView> barrels, List<BarrelView> heels) {
    Map<String, Integer> typed = typed(form, "draws", ".barrel", ".vessel");
    List<DrawRow> rows = new ArrayList<>();
    int next = typed.size();
    for (boolean heel : new boolean[] {false, true}) {
      for (BarrelView from : heel ? heels : barrels) {
        Integer at = typed.get(from.tag());
        DrawRow row = new DrawRow(at == null ? next : at, from, heel);
        if (at != null || row.holdsSyrup()) {
          rows.add(row);
          next += at == null ? 1 : 0;
        }
      }
    }
    return rows;
  }

  static List<FillRow> fills(Form form, List<Container> sizes) {
    Map<String, Integer> typed = typed(form, "fills", ".container");
    List<FillRow> rows = new ArrayList<>();
    int next = typed.size();
    for (Container size : sizes) {
      Integer at = typed.get(size.code());
      rows.add(new FillRow(at == null ? next++ : at, size));
    }
    return rows;
  }

  private static Map<String, Integer> typed(Form form, String list, String... names) {
    Map<String, Integer> typed = new HashMap<>();
    for (int n : form.rows(list, 0)) {
      for (String name : names) {
        String said = form.value(list + "[" + n + "]" + name);
        if (!said.isEmpty()) {
          typed.put(said, n);
        }
      }
    }
    return typed;
  }
}
