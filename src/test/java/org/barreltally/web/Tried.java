package org.barreltally.web;

import jakarta.inject.Inject;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.net.URI;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.barreltally.measure.Quantity;
import org.barreltally.measure.Taste;
import org.barreltally.measure.Unit;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal;

/** A resource of the tests alone: takes every kind of field and fails in every way. */
@Path("/api/tried")
public class Tried {

  record Weighing(Quantity gross, Quantity tare) {}

  record Draw(String from, @NotNull(message = "Say how much.") Quantity weight) {}

  record Counted(int count) {}

  record Filling(
      String tag,
      Integer season,
      Counted counted,
      LocalDate filledOn,
      Instant at,
      UUID id,
      Boolean all,
      BigDecimal brix,
      Taste taste,
      Weighing weighing,
      List<@Valid Draw> draws) {}

  record Wanted(@NotEmpty(message = "Name at least one.") List<@Valid Draw> draws) {}

  private static final class TooLight extends Refusal {
    TooLight(Kind kind) {
      super(kind, "too-light", "Too light", "Boil it further.", "brix");
    }
  }

  static final AtomicInteger DONE = new AtomicInteger();

  @Inject DataSource database;
  @Inject Once once;

  @POST
  public Filling echo(@Valid Filling filling) {
    return filling;
  }

  @POST
  @Path("/lines")
  public int lines(List<@Valid Draw> draws) {
    return draws.size();
  }

  @POST
  @Path("/valid")
  public int valid(@Valid Wanted wanted) {
    return wanted.draws().size();
  }

  @GET
  @Path("/by-id/{id}")
  public Map<String, UUID> byId(@PathParam("id") UUID id) {
    return Map.of("id", id);
  }

  @GET
  @Path("/refused/{kind}")
  public String refused(@PathParam("kind") Refusal.Kind kind) {
    throw new TooLight(kind);
  }

  @GET
  @Path("/paged")
  public Page<Integer> paged(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest wanted = PageRequest.of(limit, after);
    int from = wanted.after(Integer::valueOf).orElse(0);
    List<Integer> found =
        IntStream.rangeClosed(from + 1, 7).limit(wanted.limit() + 1L).boxed().toList();
    return wanted.page(found, Object::toString);
  }

  /** How many items each call of {@link #many} was asked for. */
  static final List<Integer> PARTS = new CopyOnWriteArrayList<>();

  record Many(int n, String name) {}

  @GET
  @Path("/many")
  public Page<Many> many(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest wanted = PageRequest.of(limit, after);
    PARTS.add(wanted.limit());
    int from = wanted.after(Integer::valueOf).orElse(0);
    List<Many> found =
        IntStream.rangeClosed(from + 1, 1201)
            .limit(wanted.limit() + 1L)
            .mapToObj(n -> new Many(n, NAMES.get(n % NAMES.size())))
            .toList();
    return wanted.page(found, item -> Integer.toString(item.n()));
  }

  static final List<String> NAMES =
      List.of(
          "plain",
          "a, comma",
          "a \"quoted\" word",
          "two\r\nlines",
          "Äpfel für Zoë",
          "Сироп, סירופ, 楓糖漿",
          "=1+1",
          "+49 30 1",
          "-2",
          "@home",
          "\tin",
          "'=kept",
          " leading and trailing ");

  /** A list whose second part fails when the first has long been sent. */
  @GET
  @Path("/breaking")
  public Page<Many> breaking(@QueryParam("limit") String limit, @QueryParam("after") String after) {
    PageRequest wanted = PageRequest.of(limit, after);
    if (wanted.after(Integer::valueOf).isPresent()) {
      throw new IllegalStateException("broken on the way");
    }
    List<Many> found =
        IntStream.rangeClosed(1, 101).mapToObj(n -> new Many(n, "x".repeat(1000))).toList();
    return wanted.page(found, item -> Integer.toString(item.n()));
  }

  record Measured(Quantity gap, Money price, String note) {}

  record Measures(List<Measured> items) {}

  @GET
  @Path("/measured")
  public Measures measured() {
    return new Measures(
        List.of(
            new Measured(
                new Quantity(new BigDecimal("-0.132"), Unit.GAL),
                new Money(new BigDecimal("28.00"), "USD"),
                "-x")));
  }

  @GET
  @Path("/defect")
  public String defect() {
    throw new IllegalStateException("the secret recipe");
  }

  @GET
  @Path("/sql/{state}")
  public String sql(@PathParam("state") String state) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(
          "do $$ begin raise exception 'inner words' using errcode = '"
              + state.replaceAll("[^0-9A-Z]", "")
              + "'; end $$");
    }
    return "no";
  }

  @POST
  @Path("/once")
  public Response once(@HeaderParam("Idempotency-Key") String key, Draw draw) {
    return once.answer(
        key,
        draw,
        () -> {
          int number = DONE.incrementAndGet();
          if ("refuse".equals(draw.from()) && number % 2 == 1) {
            throw new InvalidField("from", "Not this time.");
          }
          return Answer.created(
              URI.create("/api/tried/" + number), Map.of("number", number, "of", draw));
        });
  }

  @POST
  @Path("/once-too")
  public Response onceToo(@HeaderParam("Idempotency-Key") String key, Draw draw) {
    return once(key, draw);
  }
}
