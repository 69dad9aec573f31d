package org.barreltally.web.problem;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.exc.InputCoercionException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidDefinitionException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Optional;
import java.util.TreeSet;
import org.barreltally.refusal.Refusal;

/** What was wrong with a JSON body, said without the names of our classes. */
@ApplicationScoped
public class JsonProblems {

  private final Expected expected;

  @Inject
  JsonProblems(Expected expected) {
    this.expected = expected;
  }

  /** The problem, or nothing when it is a defect of ours. */
  Optional<Problem> of(JacksonException thrown) {
    String path = thrown instanceof JsonMappingException mapping ? JsonPath.of(mapping) : "";
    Throwable inmost = inmost(thrown);
    if (inmost instanceof Refusal refusal) {
      return Optional.of(Problems.of(path.isEmpty() ? refusal : refusal.under(path)));
    }
    if (inmost instanceof InputCoercionException) {
      return Optional.of(
          Problem.ofField(
              "out-of-range", "A number is out of range", path, "Give a smaller whole number."));
    }
    if (inmost instanceof StreamConstraintsException) {
      return Optional.of(tooLarge(path));
    }
    if (inmost instanceof StreamReadException broken) {
      return Optional.of(broken(broken));
    }
    if (inmost instanceof UnrecognizedPropertyException unknown) {
      return Optional.of(unknownField(path, unknown));
    }
    if (inmost instanceof InvalidDefinitionException) {
      return Optional.empty();
    }
    return inmost instanceof MismatchedInputException mismatch
        ? Optional.of(mismatch(path, mismatch))
        : Optional.empty();
  }

  static Problem notUtf8() {
    return new Problem(
        400, "broken-json", "The JSON cannot be read", "The body is not UTF-8 text. Send UTF-8.");
  }

  /** The cause that says most: the last that Jackson or a rule of ours threw. */
  private static Throwable inmost(Throwable thrown) {
    Throwable inmost = thrown;
    for (Throwable t = thrown; t != null && t != t.getCause(); t = t.getCause()) {
      if (t instanceof JacksonException || t instanceof Refusal) {
        inmost = t;
      } else if (!(inmost instanceof Refusal)) {
        inmost = t; // an exception of a constructor: a defect, unless a refusal caused it
      }
    }
    return inmost;
  }

  private static Problem broken(StreamReadException broken) {
    JsonLocation at = broken.getLocation();
    String where = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
    if (broken.getOriginalMessage().startsWith("Duplicate field")) {
      return new Problem(
          400,
          "duplicate-field",
          "A field is there twice",
          "The JSON names the same field twice" + where + ". Send it once.");
    }
    return new Problem(
        400,
        "broken-json",
        "The JSON cannot be read",
        "The JSON is malformed or breaks off" + where + ". Mend it and send again.");
  }

  private static Problem tooLarge(String path) {
    String message =
        "The JSON holds a text over 10,000 characters, a number over 1,000 digits, a name over 200,"
            + " more than 20 levels or over 1 MB in all. Send less.";
    return path.isEmpty()
        ? new Problem(400, "too-large", "Part of the JSON is too large", message)
        : Problem.ofField("too-large", "Part of the JSON is too large", path, message);
  }

  private static Problem unknownField(String path, UnrecognizedPropertyException unknown) {
    TreeSet<String> names = new TreeSet<>();
    if (unknown.getKnownPropertyIds() != null) {
      unknown.getKnownPropertyIds().forEach(id -> names.add(id.toString()));
    }
    return Problem.ofField(
        "unknown-field",
        "There is no such field",
        path,
        names.isEmpty()
            ? "No fields are known here. Leave it out."
            : "Leave it out, or mend its name; known here: " + String.join(", ", names) + ".");
  }

  private Problem mismatch(String path, MismatchedInputException mismatch) {
    if (mismatch.getOriginalMessage().startsWith("Trailing token")) {
      return new Problem(
          400,
          "broken-json",
          "The JSON cannot be read",
          "Something follows after the end of the JSON. Send one value only.");
    }
    return expected
        .unknownValue(mismatch)
        .map(allowed -> Problem.ofField("invalid-field", "A field needs mending", path, allowed))
        .orElseGet(
            () ->
                Problem.ofField(
                    "wrong-type",
                    "A field has the wrong type",
                    path,
                    "Give " + expected.of(mismatch.getTargetType()) + "."));
  }
}
