package org.barreltally.web.access;

import java.util.Set;
import java.util.regex.Pattern;

/** What a phone at a show table may ask with its own token. */
final class TableDoor {

  private static final String ID = "[0-9a-fA-F-]{36}";
  private static final Set<String> READING = Set.of("GET", "HEAD");

  private static final Pattern READ = Pattern.compile("/api/table/[^.]*");

  private static final Pattern TOLD =
      Pattern.compile(
          "/api/shows/%1$s/(sales|transfers|pack-out|back|losses|leads|losses/%1$s/reversal)"
                  .formatted(ID)
              + "|/api/sales/%s/reversal".formatted(ID));

  private TableDoor() {}

  static boolean leadsTo(String method, String path) {
    return (READING.contains(method) ? READ : TOLD).matcher(path).matches()
        && (READING.contains(method) || method.equals("POST"));
  }
}
