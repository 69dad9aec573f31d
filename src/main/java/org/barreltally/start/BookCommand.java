package org.barreltally.start;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.barreltally.books.Book;
import org.barreltally.keeping.Backup;
import org.barreltally.keeping.Manifest;
import org.barreltally.keeping.OwnedDatabase;
import org.barreltally.keeping.Restoring;
import org.barreltally.keeping.Saving;
import org.barreltally.people.LettingIn;
import org.barreltally.refusal.Refusal;

/**
 * {@code backup FILE}, {@code restore FILE} and {@code let-in NAME}, for the database that the
 * settings name. Says on the terminal what was done, or in one sentence why not.
 */
final class BookCommand {

  private static final String USAGE =
      "Say nothing to start Barreltally, or: backup FILE, restore FILE, let-in NAME; with several books, its name after that.";

  private final Settings settings;
  private final PrintStream out;

  private final Optional<String> book;

  private BookCommand(Settings settings, Optional<String> book, PrintStream out) {
    this.settings = settings;
    this.book = book;
    this.out = out;
  }

  /** Runs a command and gives the exit code, 1 when it was not done. */
  static int run(
      Map<String, String> environment, PrintStream out, PrintStream err, String... arguments) {
    try {
      Settings settings = Settings.from(environment);
      BookCommand command = new BookCommand(settings, book(settings, arguments), out);
      switch (arguments[0]) {
        case "backup" -> command.backup(file(arguments[1]));
        case "restore" -> command.restore(file(arguments[1]));
        case "let-in" -> command.letIn(arguments[1]);
        default -> throw new CannotStart(USAGE);
      }
      return 0;
    } catch (CannotStart | Refusal e) {
      err.println(e.getMessage());
    } catch (SQLException e) {
      err.println("The database refused: " + DatabaseFault.oneLine(e));
    } catch (IOException e) {
      err.println("The file cannot be read: " + DatabaseFault.oneLine(e));
    }
    return 1;
  }

  /** The book that is named last, where there are several. */
  private static Optional<String> book(Settings settings, String... arguments) {
    if (settings.books().isEmpty() && arguments.length == 2) {
      return Optional.empty();
    }
    if (settings.books().isEmpty() || arguments.length != 3) {
      throw new CannotStart(USAGE);
    }
    if (!settings.books().contains(arguments[2])) {
      throw new CannotStart(
          "There is no book of %s in %s.".formatted(arguments[2], BookNames.SETTING));
    }
    return Optional.of(arguments[2]);
  }

  private static Path file(String text) {
    try {
      return Path.of(text).toAbsolutePath().normalize();
    } catch (InvalidPathException e) {
      throw new CannotStart("FILE is not a path that this system can use.", e);
    }
  }

  private void backup(Path file) throws SQLException {
    try (CommandDatabase database = CommandDatabase.toRead(settings)) {
      DatabaseLogin owner = database.owner();
      Backup made = new Saving(toRead(owner)).save(file, Instant.now());
      out.printf(
          Locale.ROOT,
          "Saved to %s: %d tables, %d rows, %d bytes%n  sha256 %s%n  The names and addresses of people are in it: keep it where only you can read it.%n",
          file,
          made.tables().size(),
          made.rows(),
          made.bytes(),
          made.sha256());
    }
  }

  private void restore(Path file) throws SQLException, IOException {
    Restoring.look(file); // before a database is made for it
    try (CommandDatabase database = CommandDatabase.toFill(settings)) {
      DatabaseLogin owner = database.owner();
      Manifest restored = new Restoring(toFill(owner)).restore(file);
      out.printf(
          Locale.ROOT,
          "Restored %s, made at %s: %d tables, %d rows%n  Passwords and tokens are those of that day: take back the tokens of lost phones again.%n",
          file,
          restored.madeAt(),
          restored.tables().size(),
          restored.rows());
    }
  }

  private void letIn(String name) throws SQLException {
    try (CommandDatabase database = CommandDatabase.toRead(settings)) {
      String password =
          new LettingIn(database.owner().in(toRead(database.owner()).schema()))
              .letIn(name, Instant.now())
              .orElseThrow(() -> new CannotStart("Nobody signs in as %s.".formatted(name)));
      out.printf(
          Locale.ROOT,
          "Sign in as %s with password %s%n  It is shown once: change it on your own page. Codes are asked for no longer; set them up anew there.%n",
          name,
          password);
    }
  }

  private OwnedDatabase toRead(DatabaseLogin owner) {
    String login = new DatabaseRoles(owner).application().user();
    return book.map(name -> owner.owned(new BookRoles(owner, login).book(name), login))
        .orElseGet(() -> owner.owned(login));
  }

  private OwnedDatabase toFill(DatabaseLogin owner) throws SQLException {
    String login = new DatabaseRoles(owner).ensure().user();
    if (book.isEmpty()) {
      return owner.owned(login);
    }
    BookRoles roles = new BookRoles(owner, login);
    Book named = roles.book(book.get());
    try (Connection connection = owner.connect()) {
      roles.ensure(connection, named);
    }
    return owner.owned(named, login);
  }
}
