package org.barreltally.people;

import java.security.Principal;
import java.util.UUID;

/**
 * A user who has proved who they are.
 *
 * @param scope what their token limits them to; null for all that the role may do
 */
public record Person(UUID id, String name, String displayName, Role role, TokenScope scope)
    implements Principal {

  public Person(UUID id, String name, String displayName, Role role) {
    this(id, name, displayName, role, null);
  }

  /** The same person behind a token of that scope, in the role that belongs to it. */
  public Person within(TokenScope scope) {
    Role lesser = role.mayWrite() ? Role.TABLE : role;
    return scope == null ? this : new Person(id, name, displayName, lesser, scope);
  }

  @Override
  public String getName() {
    return name;
  }
}
