package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Under whose name the server's programs run. PostgreSQL refuses to run as root, so a start by root
 * hands it to an unprivileged user. An ordinary user runs it as himself; on Windows {@code pg_ctl}
 * drops an administrator's rights by itself.
 */
final class ServerAccount {

  private static final String UNPRIVILEGED = "nobody";
  private static final String UNPRIVILEGED_GROUP = "65534";
  private static final String NO_WAY =
      "PostgreSQL refuses to run as root, and the user nobody cannot reach %s; start Barreltally as an"
          + " ordinary user, or choose a folder that others may enter with BARRELTALLY_DATA.";
  private static final Duration PROBE_LIMIT = Duration.ofSeconds(30);

  private final List<String> prefix;
  private final Optional<String> owner;

  private ServerAccount(List<String> prefix, String owner) {
    this.prefix = prefix;
    this.owner = Optional.ofNullable(owner);
  }

  /**
   * Chooses the first way that works here. As root these are tried: another user, which needs no
   * user namespace (containers often forbid them); and a user namespace of its own, for a data
   * folder below a folder that only root may enter.
   */
  static ServerAccount choose(ServerBinaries binaries, Path folder, Platform platform) {
    if (platform.isWindows() || !isRoot()) {
      return new ServerAccount(List.of(), null);
    }
    List<String> otherUser =
        List.of(
            "setpriv",
            "--reuid=" + UNPRIVILEGED,
            "--regid=" + UNPRIVILEGED_GROUP,
            "--clear-groups");
    return Stream.of(
            new ServerAccount(otherUser, UNPRIVILEGED),
            new ServerAccount(List.of("unshare", "-U"), "root"))
        .filter(way -> way.works(binaries, folder))
        .findFirst()
        .orElseThrow(() -> new CannotStart(NO_WAY.formatted(folder)));
  }

  private static boolean isRoot() {
    return new com.sun.security.auth.module.UnixSystem().getUid() == 0;
  }

  private boolean works(ServerBinaries binaries, Path folder) {
    String probe = "test \"$(id -u)\" != 0 && id -un >/dev/null && exec \"$0\" --version";
    List<String> command = command(List.of("sh", "-c", probe, binaries.program("postgres")));
    try {
      return Command.run(folder, command, PROBE_LIMIT).succeeded();
    } catch (IOException e) {
      return false; // the program is not installed
    }
  }

  /** The command line that runs a program under this account. */
  List<String> command(List<String> program) {
    List<String> all = new ArrayList<>(prefix);
    all.addAll(program);
    return all;
  }

  /**
   * Hands a file or folder with all it holds to this account; the top last, so a broken-off run is
   * redone.
   */
  void own(Path path) throws IOException {
    if (owner.isEmpty()) {
      return;
    }
    UserPrincipal account =
        path.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(owner.get());
    if (Files.getOwner(path).equals(account)) {
      return;
    }
    List<Path> found;
    try (Stream<Path> tree = Files.walk(path)) {
      found = tree.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path each : found) {
      Files.setOwner(each, account);
    }
  }
}
