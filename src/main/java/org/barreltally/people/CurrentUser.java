package org.barreltally.people;

import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.UUID;

/** Who is asking. Lives as long as one request; templates know it as {@code currentUser}. */
@RequestScoped
@Named("currentUser")
public class CurrentUser {

  private final SecurityIdentity identity;
  private Person acting;

  @Inject
  CurrentUser(SecurityIdentity identity) {
    this.identity = identity;
  }

  /**
   * Makes the rest of this request act as {@code person}: for work that the program starts itself,
   * without an HTTP request, inside an activated request context.
   */
  public void actAs(Person person) {
    acting = person;
  }

  /** Whether somebody is signed in; false on the sign-in page. */
  public boolean isSignedIn() {
    return acting != null || identity.getPrincipal() instanceof Person;
  }

  public UUID id() {
    return person().id();
  }

  public String name() {
    return person().name();
  }

  public String displayName() {
    return person().displayName();
  }

  /** The code of the role, for example {@code owner}. */
  public String role() {
    return person().role().code();
  }

  public boolean mayWrite() {
    return person().role().mayWrite();
  }

  private Person person() {
    if (acting != null) {
      return acting;
    }
    if (identity.getPrincipal() instanceof Person person) {
      return person;
    }
    throw new IllegalStateException("nobody is signed in here");
  }
}
