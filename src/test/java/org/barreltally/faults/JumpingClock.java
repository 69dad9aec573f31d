package org.barreltally.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * A clock of the machine that jumps: libfaketime (Debian: faketime) reads from a file how far off
 * the program's and its database's clock is. What measures time that passed goes on as it was.
 */
final class JumpingClock {

  private static final List<Duration> OFFSETS =
      List.of(
          Duration.ofMinutes(-90), Duration.ofMinutes(90), Duration.ofDays(-1), Duration.ofDays(2));

  private static final int JUMPS = 3;

  /** How long its jumps take. */
  static final Duration ROUND = Duration.ofSeconds(4);

  /** The file is read once a second. */
  private static final Duration BETWEEN = Duration.ofMillis(1_100);

  private final Path library;
  private final Path offset;

  JumpingClock(Path folder) throws IOException {
    library = library();
    offset = folder.resolve("clock");
    jump(Duration.ZERO);
  }

  private static Path library() throws IOException {
    try (Stream<Path> homes = Files.list(Path.of("/usr/lib"))) {
      return homes
          .map(home -> home.resolve("faketime/libfaketimeMT.so.1"))
          .filter(Files::exists)
          .findFirst()
          .orElse(null);
    }
  }

  boolean isThere() {
    return library != null;
  }

  /** What a program must be started with, so that its clock is this one. */
  Map<String, String> settings() {
    return Map.of(
        "LD_PRELOAD",
        library.toString(),
        "FAKETIME_TIMESTAMP_FILE",
        offset.toString(),
        "FAKETIME_CACHE_DURATION",
        "1",
        "FAKETIME_DONT_FAKE_MONOTONIC",
        "1",
        // else waiting threads of the Java machine spin
        "FAKETIME_FORCE_MONOTONIC_FIX",
        "0");
  }

  /** Jumps a few times, ahead and back. */
  void jumps(Random random) throws IOException, InterruptedException {
    for (int n = 0; n < JUMPS; n++) {
      jump(OFFSETS.get(random.nextInt(OFFSETS.size())));
      Thread.sleep(BETWEEN.toMillis());
    }
  }

  /** Stands that far from the machine's clock within a second. */
  void jump(Duration far) throws IOException {
    Path next = offset.resolveSibling("clock.next");
    Files.writeString(next, "%+d".formatted(far.toSeconds()));
    Files.move(
        next,
        offset,
        java.nio.file.StandardCopyOption.REPLACE_EXISTING,
        java.nio.file.StandardCopyOption.ATOMIC_MOVE);
  }
}
