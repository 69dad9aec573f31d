package org.barreltally.people;

import java.security.Principal;
import java.util.UUID;

/** A user who has proved who they are. */
public record Person(UUID id, String name, String displayName, Role role) implements Principal {

  @Override
  public String getName() {
    return name;
  }
}
