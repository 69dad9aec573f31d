package org.barreltally.web;

import java.util.List;

/**
 * A part of a list.
 *
 * @param next what to send as {@code after} for the part that follows; null at the end
 */
public record Page<T>(List<T> items, String next) {

  public Page {
    items = List.copyOf(items);
  }
}
