package org.barreltally.start;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.util.List;
import java.util.Optional;
import org.barreltally.books.Book;
import org.barreltally.books.Books;
import org.barreltally.demo.DemoSeason;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The program: {@code java -jar quarkus-run.jar}, with its settings in the environment. Followed by
 * {@code backup FILE}, {@code restore FILE} or {@code let-in NAME} it does that and ends.
 */
@QuarkusMain
public final class Barreltally {

  Barreltally() {}

  /**
   * Starts the database, then the application, and waits until it is told to stop. Ends with exit
   * code 1 and one sentence when it cannot start.
   */
  public static void main(String... arguments) {
    int exit;
    if (arguments.length > 0) {
      exit = BookCommand.run(System.getenv(), System.out, System.err, arguments);
    } else {
      Run run = new Run();
      Runtime.getRuntime().addShutdownHook(new Thread(run::stop, "stop"));
      exit = run.start(System.getenv(), arguments);
    }
    if (exit != 0) {
      System.exit(exit);
    }
  }

  /** What runs once the application answers: say so, then wait for the end. */
  public static final class Serving implements QuarkusApplication {

    private final Announcement announcement;
    private final DemoSeason demo;
    private final boolean demoWanted;
    private final int port;

    /** Takes what there is to announce from the configuration. */
    public Serving(
        @ConfigProperty(name = "quarkus.http.port") int port,
        @ConfigProperty(name = "barreltally.tls.port") int https,
        @ConfigProperty(name = "barreltally.tls.said") Optional<String> said,
        @ConfigProperty(name = "barreltally.data") String data,
        @ConfigProperty(name = "barreltally.demo") boolean demoWanted,
        Books books,
        DemoSeason demo) {
      List<String> names =
          books.several() ? books.all().stream().map(Book::name).toList() : List.of();
      this.announcement = new Announcement(port, https, said, names, data);
      this.demo = demo;
      this.demoWanted = demoWanted;
      this.port = port;
    }

    @Override
    public int run(String... arguments) {
      announcement.print(System.out);
      if (demoWanted) {
        demo.play(port, System.out);
      }
      Quarkus.waitForExit();
      return 0;
    }
  }
}
