package org.barreltally.faults;

import java.io.IOException;
import java.nio.file.Path;

/**
 * A disk of its own for the data folder, small enough to be filled: a tmpfs, which only root
 * mounts.
 */
final class SmallDisk implements AutoCloseable {

  private final Path folder;
  private final boolean mounted;

  SmallDisk(Path folder) throws IOException, InterruptedException {
    this.folder = folder;
    mounted = run("mount", "-t", "tmpfs", "-o", "size=1500m,mode=755", "tmpfs", folder.toString());
  }

  boolean isThere() {
    return mounted;
  }

  private static boolean run(String... command) throws InterruptedException {
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException noSuchProgram) {
      return false;
    }
  }

  @Override
  public void close() throws InterruptedException {
    if (mounted) {
      run("umount", "--lazy", folder.toString());
    }
  }
}
