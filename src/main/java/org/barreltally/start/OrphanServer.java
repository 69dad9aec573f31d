package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Server processes that an earlier run left behind when it was killed. They are known by their
 * program, which lies in this data folder: the number in {@code postmaster.pid} alone may by now be
 * another program's. The caller holds the data folder's lock, so no living application owns them.
 */
final class OrphanServer {

  private static final long SECONDS_TO_END = 10;
  private static final String PROCESS_NUMBER = "[1-9][0-9]{0,17}";
  private static final long MILLISECONDS_BETWEEN_LOOKS = 50;

  private final DataFolder folder;

  OrphanServer(DataFolder folder) {
    this.folder = folder;
  }

  /** Ends what was left behind and removes a pid file that no longer tells the truth. */
  void stop(ServerControl control) throws IOException {
    Path pidFile = folder.database().resolve("postmaster.pid");
    if (isPostmaster(pidFile)) {
      control.stop();
    }
    await(); // children of a killed postmaster notice and go
    for (ProcessHandle left : processes()) {
      left.destroyForcibly(); // loses nothing: what was committed is in the write-ahead log
    }
    await();
    if (!processes().isEmpty()) {
      throw new CannotStart(
          "A database server of an earlier run on %s does not end; end its process %d."
              .formatted(folder.root(), processes().get(0).pid()));
    }
    Files.deleteIfExists(pidFile);
  }

  /** Whether the server of this folder runs. */
  boolean isRunning() throws IOException {
    return isPostmaster(folder.database().resolve("postmaster.pid"));
  }

  private boolean isPostmaster(Path pidFile) throws IOException {
    if (!Files.exists(pidFile)) {
      return false;
    }
    String pid = Files.readString(pidFile).lines().findFirst().orElse("").strip();
    return pid.matches(PROCESS_NUMBER)
        && ProcessHandle.of(Long.parseLong(pid)).filter(this::isOurs).isPresent();
  }

  /** Living processes whose program lies in this data folder. */
  List<ProcessHandle> processes() {
    return ProcessHandle.allProcesses().filter(this::isOurs).toList();
  }

  private boolean isOurs(ProcessHandle process) {
    return process.isAlive()
        && process
            .info()
            .command()
            .filter(command -> Path.of(command).startsWith(folder.root()))
            .isPresent();
  }

  /** Waits some seconds for the processes to end; looked at directly, the system tells nobody. */
  private void await() {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SECONDS_TO_END);
    try {
      while (!processes().isEmpty() && System.nanoTime() < end) {
        Thread.sleep(MILLISECONDS_BETWEEN_LOOKS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CannotStart("Interrupted while waiting for an earlier database server.", e);
    }
  }
}
