package org.barreltally.web;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.barreltally.refusal.InvalidField;

/**
 * Which part of a list is wanted: at most {@link #limit} items after the one whose sort key {@link
 * #after} gives. The cursor is opaque outside: the sort key of the last item, in Base64.
 */
public final class PageRequest {

  /** Items given when no limit is asked for. */
  public static final int LIMIT_DEFAULT = 100;

  /** The most items given at once. */
  public static final int LIMIT_MAX = 500;

  private static final int CURSOR_LENGTH_MAX = 400;
  private static final String MARK = "1:";

  private final int limit;
  private final String key;

  private PageRequest(int limit, String key) {
    this.limit = limit;
    this.key = key;
  }

  /**
   * Reads the query parameters {@code limit} and {@code after}, each null if absent.
   *
   * @throws InvalidField if either cannot be read
   */
  public static PageRequest of(String limit, String after) {
    return new PageRequest(readLimit(limit), after == null ? null : readCursor(after));
  }

  /** How many items are wanted at most. Read one more from the database to know of a next part. */
  public int limit() {
    return limit;
  }

  /**
   * The sort key after which the part begins; empty at the beginning.
   *
   * @param read reads the key from its text; whatever it throws refuses the cursor
   */
  public <K> Optional<K> after(Function<String, K> read) {
    if (key == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(read.apply(key));
    } catch (RuntimeException e) {
      throw badCursor();
    }
  }

  /**
   * The page of up to {@code limit} items.
   *
   * @param found items in order, one more than the limit if there are
   * @param keyOf the sort key of an item, as text that {@link #after} reads again
   */
  public <T> Page<T> page(List<T> found, Function<T, String> keyOf) {
    if (found.size() <= limit) {
      return new Page<>(found, null);
    }
    return new Page<>(found.subList(0, limit), cursor(keyOf.apply(found.get(limit - 1))));
  }

  private static String cursor(String key) {
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString((MARK + key).getBytes(StandardCharsets.UTF_8));
  }

  private static int readLimit(String limit) {
    if (limit == null) {
      return LIMIT_DEFAULT;
    }
    if (limit.matches("[0-9]{1,4}")) {
      int number = Integer.parseInt(limit);
      if (number >= 1 && number <= LIMIT_MAX) {
        return number;
      }
    }
    throw new InvalidField("limit", "Give a whole number from 1 to " + LIMIT_MAX + ".");
  }

  private static String readCursor(String after) {
    if (after.length() > CURSOR_LENGTH_MAX) {
      throw badCursor();
    }
    try {
      byte[] bytes = Base64.getUrlDecoder().decode(after);
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      if (!text.startsWith(MARK) || text.indexOf('\0') >= 0) {
        throw badCursor();
      }
      return text.substring(MARK.length());
    } catch (IllegalArgumentException | CharacterCodingException e) {
      throw badCursor();
    }
  }

  private static InvalidField badCursor() {
    return new InvalidField(
        "after", "Give what an earlier answer named as next, or leave it out to begin anew.");
  }
}
