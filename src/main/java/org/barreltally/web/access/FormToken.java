package org.barreltally.web.access;

import io.quarkus.arc.Unremovable;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.barreltally.web.problem.Problem;
import org.barreltally.web.problem.Refused;

/**
 * Proves that a form came from a page that this session was shown. It is made from the session's
 * secret, so nothing is stored, another site cannot know it, and it ends with the session.
 */
@RequestScoped
@Unremovable
public class FormToken {

  /** The hidden field that carries it. */
  public static final String FIELD = "token";

  /** The hidden field of a form that comes back after signing in anew: shown, not done. */
  public static final String RESUMED = "resumed";

  private static final String ALGORITHM = "HmacSHA256";
  private static final byte[] PURPOSE = "form of a page".getBytes(StandardCharsets.UTF_8);

  private final SessionAtHand session;

  @Inject
  FormToken(SessionAtHand session) {
    this.session = session;
  }

  /** The token of this session; empty where there is none. */
  public String text() {
    String secret = session.secret();
    return secret == null ? "" : of(secret);
  }

  /**
   * Lets a form pass that carries this session's token.
   *
   * @throws Refused if it does not
   */
  public void check(String given) {
    String own = text();
    if (own.isEmpty()
        || given == null
        || !MessageDigest.isEqual(
            own.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8))) {
      throw new Refused(
          new Problem(
              403,
              "form-outdated",
              "This form is from before you signed in",
              "Nothing was done. Go back, load the page anew and send it again."));
    }
  }

  /** The token of a session that has just begun. */
  static String of(String secret) {
    try {
      Mac mac = Mac.getInstance(ALGORITHM);
      mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), ALGORITHM));
      return Base64.getUrlEncoder().withoutPadding().encodeToString(mac.doFinal(PURPOSE));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has " + ALGORITHM, e);
    }
  }
}
