package org.barreltally.faults;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barreltally.start.Program;

/** What breaks. */
enum Fault {
  /** The program is killed (SIGKILL); its database goes on. */
  PROGRAM_KILLED {
    @Override
    void strike(Program program, Path folder) throws InterruptedException {
      program.kill();
    }
  },
  /** The database's first process is killed (SIGKILL). */
  DATABASE_KILLED {
    @Override
    void strike(Program program, Path folder) throws IOException {
      postmaster(folder).destroyForcibly();
    }
  },
  /** The database is told to drop everything (SIGQUIT, an immediate shutdown). */
  DATABASE_QUIT {
    @Override
    void strike(Program program, Path folder) throws IOException, InterruptedException {
      new ProcessBuilder("kill", "-QUIT", Long.toString(postmaster(folder).pid()))
          .start()
          .waitFor();
    }
  },
  /** Program and database are killed at the same moment, as when the plug is pulled. */
  BOTH_KILLED {
    @Override
    void strike(Program program, Path folder) throws IOException, InterruptedException {
      ProcessHandle server = postmaster(folder);
      server.destroyForcibly();
      program.kill();
    }
  },
  /** All connections of the program to its database are ended. */
  CONNECTIONS_ENDED {
    @Override
    void strike(Program program, Path folder) throws IOException {
      ended(folder);
    }
  },
  /** The disk of the data folder is full, and somebody makes room later. */
  DISK_FULL {
    @Override
    void strike(Program program, Path folder) throws IOException {
      byte[] much = new byte[1 << 20];
      try (OutputStream out = Files.newOutputStream(filler(folder))) {
        while (true) {
          out.write(much);
        }
      } catch (IOException full) {
        if (Files.getFileStore(folder).getUsableSpace() > much.length) {
          throw full;
        }
      }
    }

    @Override
    void mend(Path folder) throws IOException {
      Files.deleteIfExists(filler(folder));
    }

    private Path filler(Path folder) {
      return folder.resolve("filler");
    }
  },
  /** Connections of askers break in the middle of requests and answers. */
  CUT {
    @Override
    void strike(Program program, Path folder) {}
  },
  /** The machine's clock jumps ahead and back, under program and database alike. */
  CLOCK_JUMPS {
    @Override
    void strike(Program program, Path folder) {}
  },
  /** Nothing breaks; requests are repeated and come in another order. */
  REPEATED {
    @Override
    void strike(Program program, Path folder) {}
  };

  abstract void strike(Program program, Path folder) throws IOException, InterruptedException;

  /** Takes away what would go on by itself. */
  void mend(Path folder) throws IOException {}

  private static ProcessHandle postmaster(Path folder) throws IOException {
    String pid = Files.readAllLines(folder.resolve("database/postmaster.pid")).get(0).strip();
    return ProcessHandle.of(Long.parseLong(pid)).orElseThrow();
  }

  /** The processes that serve connections end by SIGTERM, as pg_terminate_backend sends it. */
  private static void ended(Path folder) throws IOException {
    postmaster(folder)
        .children()
        .filter(
            child ->
                child.info().commandLine().map(line -> line.contains("127.0.0.1")).orElse(false))
        .forEach(ProcessHandle::destroy);
  }
}
