package org.barreltally.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;

/** Folders with all that is in them, put elsewhere with the owners and rights of each file. */
final class FolderTree {

  private FolderTree() {}

  private interface OneFile {
    void put(Path from, Path to) throws IOException;
  }

  static void copy(Path from, Path to) throws IOException {
    all(from, to, FolderTree::same);
  }

  /** Copies one file, or a folder without what is in it, with its owner and rights. */
  private static void same(Path from, Path to) throws IOException {
    Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
  }

  /** Programs are only read: one file in many folders, where the folders are of one disk. */
  static void link(Path from, Path to) throws IOException {
    boolean oneDisk =
        Files.getFileStore(from).equals(Files.getFileStore(to.toAbsolutePath().getParent()));
    if (oneDisk) {
      all(from, to, (file, link) -> Files.createLink(link, file));
    } else {
      copy(from, to);
    }
  }

  /** Makes the folders of a tree anew and puts every file of it there, in one way or another. */
  private static void all(Path from, Path to, OneFile each) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : (Iterable<Path>) all::iterator) {
        Path there = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
          same(path, there);
        } else {
          each.put(path, there);
        }
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
