package org.barreltally.web.access;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.barreltally.people.Role;
import org.barreltally.refusal.Refusal;

/** What was asked is for people in other roles. */
public final class NotYourPart extends Refusal {

  NotYourPart(Role role, Set<Role> others) {
    super(
        Kind.FORBIDDEN,
        "not-allowed",
        "Not allowed",
        "Your role is %s. This is for %s; ask one of them."
            .formatted(
                role.code(),
                Stream.concat(Stream.of(Role.OWNER), others.stream())
                    .map(Role::code)
                    .collect(Collectors.joining(", "))));
  }
}
