package org.barreltally.people.internal;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.barreltally.people.EntranceEvent;
import org.barreltally.people.EntranceLog;
import org.barreltally.people.Role;

/** The rows of {@code entrance_log}, read together with those of {@code people_log}. */
@ApplicationScoped
public class EntranceRows {

  private static final String NEWEST =
      """
      select l.id, l.what, l.recorded_at, l.role, l.address, u.name as person, b.name as by_whom, t.name as token
      from (select id, what, about, token, address, null as role, null::uuid as recorded_by, recorded_at from entrance_log
            union all
            select id, what, about, null, null, role, recorded_by, recorded_at from people_log) l
      left join users u on u.id = l.about
      left join users b on b.id = l.recorded_by
      left join access_tokens t on t.id = l.token
      where (?::text is null or u.name = ?::text) and (?::text is null or l.what = ?::text)
        and (?::timestamptz is null or (l.recorded_at, l.id) < (?::timestamptz, ?::uuid))
      order by l.recorded_at desc, l.id desc limit ?
      """;

  private final DataSource database;

  @Inject
  EntranceRows(DataSource database) {
    this.database = database;
  }

  public void add(EntranceEvent what, UUID about, UUID token, String address, Instant at) {
    new Statement(
            database,
            "insert into entrance_log (id, what, about, token, address, recorded_at) values (?, ?, ?, ?, ?, ?)",
            UUID.randomUUID(),
            what.code(),
            about,
            token,
            NetworkAddress.alone(address),
            at)
        .note();
  }

  public List<EntranceLog.Entry> newest(
      String person, EntranceEvent what, EntranceLog.Place after, int limit) {
    String code = what == null ? null : what.code();
    Instant at = after == null ? null : after.at();
    return new Statement(
            database,
            NEWEST,
            person,
            person,
            code,
            code,
            at,
            at,
            after == null ? null : after.id(),
            limit)
        .all(EntranceRows::entry);
  }

  private static EntranceLog.Entry entry(ResultSet row) throws SQLException {
    String role = row.getString("role");
    return new EntranceLog.Entry(
        row.getObject("id", UUID.class),
        row.getObject("recorded_at", OffsetDateTime.class).toInstant(),
        EntranceEvent.of(row.getString("what")),
        row.getString("person"),
        row.getString("by_whom"),
        role == null ? null : Role.of(role),
        row.getString("token"),
        row.getString("address"));
  }
}
