package org.barreltally.web.pages;

import jakarta.ws.rs.BadRequestException;
import java.util.UUID;

/** The id of a record that a form holds without showing it: only a changed page sends another. */
public final class HiddenId {

  private HiddenId() {}

  /**
   * Reads it.
   *
   * @throws BadRequestException if it is none
   */
  public static UUID read(String sent) {
    try {
      return UUID.fromString(sent);
    } catch (IllegalArgumentException | NullPointerException made) {
      throw new BadRequestException(made);
    }
  }
}
