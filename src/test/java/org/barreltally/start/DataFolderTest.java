package org.barreltally.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {

  @TempDir Path parent;

  @Test
  void a_missing_folder_is_made_with_its_parents() {
    try (DataFolder folder = DataFolder.open(parent.resolve("a/b"))) {
      assertTrue(Files.isDirectory(folder.root()));
    }
  }

  @Test
  void a_folder_in_use_is_refused_until_it_is_given_back() {
    try (DataFolder first = DataFolder.open(parent)) {
      CannotStart refusal = assertThrows(CannotStart.class, () -> DataFolder.open(parent));
      assertTrue(refusal.getMessage().contains(first.root() + " is in use"), refusal.getMessage());
    }
    DataFolder.open(parent).close();
  }

  @Test
  void a_file_in_the_way_is_refused() throws IOException {
    Path file = Files.createFile(parent.resolve("file"));

    for (Path path : new Path[] {file, file.resolve("data")}) {
      CannotStart refusal = assertThrows(CannotStart.class, () -> DataFolder.open(path));
      assertTrue(refusal.getMessage().contains("cannot be used"), refusal.getMessage());
    }
  }

  @Test
  void a_folder_of_someone_else_is_refused() throws IOException {
    Path closed = Files.createDirectory(parent.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-x------"));
    assumeTrue(!Files.isWritable(closed), "root may write everywhere");

    CannotStart refusal = assertThrows(CannotStart.class, () -> DataFolder.open(closed));

    assertTrue(refusal.getMessage().contains("cannot be written"), refusal.getMessage());
  }

  @Test
  void the_password_is_made_once_and_kept_from_others() throws IOException {
    try (DataFolder folder = DataFolder.open(parent.resolve("one"));
        DataFolder other = DataFolder.open(parent.resolve("two"))) {
      String password = DatabasePassword.of(folder);

      assertEquals(password, DatabasePassword.of(folder));
      assertNotEquals(password, DatabasePassword.of(other));
      assertEquals(43, password.length(), "32 random bytes as base64url");
      assertEquals(
          "rw-------",
          PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.passwordFile())));
    }
  }

  @Test
  void a_lost_password_is_not_replaced_while_its_database_is_there() throws IOException {
    try (DataFolder folder = DataFolder.open(parent)) {
      Files.createDirectory(folder.database());

      CannotStart refusal = assertThrows(CannotStart.class, () -> DatabasePassword.of(folder));

      assertTrue(refusal.getMessage().contains("is missing"), refusal.getMessage());
    }
  }
}
