package org.barreltally.books;

/**
 * A sugarhouse's book.
 *
 * @param name its schema in the database and the first part of the host name under which it is
 *     asked for; empty where the program keeps one book, under whatever name
 * @param role the role of the database that may read and write this book and no other; empty where
 *     the program keeps one book
 */
public record Book(String name, String role) {

  /** The one book of a program that keeps no other. */
  static final Book ONLY = new Book("", "");

  /** Reads it as the configuration has it, {@code name:role}. */
  static Book read(String text) {
    int colon = text.indexOf(':');
    return new Book(text.substring(0, colon), text.substring(colon + 1));
  }

  /** As the configuration has it. */
  public String written() {
    return name + ":" + role;
  }

  /** Says it in front of a sentence on the terminal or in the log; nothing for the one book. */
  public String before(String sentence) {
    return name.isEmpty() ? sentence : name + ": " + sentence;
  }
}
