package org.barreltally.start;

import io.quarkus.runtime.Quarkus;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.barreltally.books.Book;
import org.jboss.logging.Logger;

/**
 * One run of the program, from settings to end. {@link #start} runs in the main thread, {@link
 * #stop} in the thread that the system's signal wakes: it lets the application finish first and
 * then stops its database.
 */
final class Run {

  private static final long SECONDS_TO_FINISH = 30;

  private final CountDownLatch applicationEnded = new CountDownLatch(1);
  private volatile boolean stopping;
  private boolean applicationStarted;
  private boolean standby;
  private List<Book> several = List.of();
  private EmbeddedServer server;
  private int exit;

  /**
   * Starts everything and returns when the application has ended.
   *
   * @return the exit code, 1 when it could not start
   */
  int start(Map<String, String> environment, String... arguments) {
    try {
      Settings settings = Settings.from(environment);
      prepare(settings);
      ApplicationProperties.of(settings).forEach(System::setProperty);
      if (standby) {
        ApplicationProperties.ofStandby().forEach(System::setProperty);
      }
      if (!several.isEmpty()) {
        ApplicationProperties.ofSeveral(several).forEach(System::setProperty);
      }
      Tls.prepare(settings.tls(), settings.data()).forEach(System::setProperty);
      serve(settings, arguments);
    } catch (CannotStart e) {
      say(e);
    } finally {
      applicationEnded.countDown();
    }
    return exit;
  }

  private void prepare(Settings settings) {
    DatabaseLogin owner;
    if (settings.outside().isPresent()) {
      HttpPort.mustBeFree(settings.port());
      owner = settings.outside().get();
    } else {
      EmbeddedServer embedded = new EmbeddedServer(DataFolder.open(settings.data()));
      HttpPort.mustBeFree(settings.port());
      takeOver(embedded);
      owner = embedded.start();
    }
    DatabaseRoles roles = new DatabaseRoles(owner);
    standby = settings.outside().isPresent() && owner.isStandby();
    DatabaseLogin application = standby ? roles.ofStandby() : roles.ensure();
    ApplicationProperties.database(owner, application).forEach(System::setProperty);
    if (!settings.books().isEmpty()) {
      several = new SeveralBooks(owner, application).ready(settings.books(), standby);
    }
  }

  private synchronized void takeOver(EmbeddedServer embedded) {
    server = embedded;
    if (stopping) {
      server.stop();
    }
  }

  private void serve(Settings settings, String... arguments) {
    synchronized (this) {
      if (stopping) {
        return;
      }
      applicationStarted = true;
    }
    UnreadDescription.hide();
    Quarkus.run(
        Barreltally.Serving.class,
        (code, fault) -> {
          exit = code;
          if (fault != null) {
            explain(fault, settings);
          }
        },
        arguments);
  }

  private void explain(Throwable fault, Settings settings) {
    StartFault.sentence(fault, settings.port())
        .ifPresentOrElse(
            this::say,
            () -> {
              Logger.getLogger(Run.class).error("Barreltally could not start", fault);
              exit = 1;
            });
  }

  /** Says why the start ends; nothing if it was told to stop meanwhile. */
  private void say(CannotStart reason) {
    exit = 1;
    if (!stopping) {
      System.err.println(reason.getMessage());
    }
  }

  /** Waits for the application's end, then stops its database. */
  void stop() {
    EmbeddedServer toStop;
    boolean started;
    synchronized (this) {
      stopping = true;
      toStop = server;
      started = applicationStarted;
    }
    try {
      if (started && !applicationEnded.await(SECONDS_TO_FINISH, TimeUnit.SECONDS)) {
        Logger.getLogger(Run.class)
            .warn("The application is slow to finish; its database is stopped now");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    if (toStop != null) {
      toStop.stop();
    }
  }
}
