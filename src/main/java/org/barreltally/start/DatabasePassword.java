package org.barreltally.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * The embedded database's password: random, made once, kept in a file that only its owner reads.
 */
final class DatabasePassword {

  private static final int RANDOM_BYTES = 32;

  private DatabasePassword() {}

  /** The password of this folder, made and stored at the first call. */
  static String of(DataFolder folder) throws IOException {
    Path file = folder.passwordFile();
    if (!Files.exists(file)) {
      if (Files.exists(folder.database())) {
        throw new CannotStart(
            "The file %s is missing, and the database beside it cannot be opened without; put it back from a copy."
                .formatted(file));
      }
      write(file, random());
    }
    return Files.readString(file).strip();
  }

  private static String random() {
    byte[] bytes = new byte[RANDOM_BYTES];
    new SecureRandom().nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** Writes the whole file or none of it, readable by its owner only from its first moment. */
  static void write(Path file, String password) throws IOException {
    Path partial = file.resolveSibling(file.getFileName() + ".partial");
    Files.deleteIfExists(partial);
    createPrivate(partial);
    Files.writeString(partial, password + "\n");
    Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  static void createPrivate(Path file) throws IOException {
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.createFile(
          file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    } else {
      Files.createFile(file); // Windows: the folder's access list holds
    }
  }
}
