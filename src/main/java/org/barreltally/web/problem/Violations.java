package org.barreltally.web.problem;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.ConstraintViolationException;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** Bean Validation's violations as fields named the way they stand in the JSON. */
final class Violations {

  private Violations() {}

  /** The problem, or nothing when an answer of ours was found invalid, which is a defect. */
  static Optional<Problem> of(ConstraintViolationException violated) {
    if (violated.getConstraintViolations().stream().anyMatch(Violations::isOurs)) {
      return Optional.empty();
    }
    List<FieldError> errors =
        violated.getConstraintViolations().stream()
            .map(v -> new FieldError(field(v.getPropertyPath()), v.getMessage()))
            .distinct()
            .sorted(Comparator.comparing(FieldError::field).thenComparing(FieldError::message))
            .toList();
    return Optional.of(Problems.of(new InvalidField(errors)));
  }

  private static boolean isOurs(ConstraintViolation<?> violation) {
    for (Path.Node node : violation.getPropertyPath()) {
      if (node.getKind() == ElementKind.RETURN_VALUE) {
        return true;
      }
    }
    return false;
  }

  /** {@code draws[0].weight} of {@code run.wanted.draws[0].weight}: without method, parameter. */
  static String field(Path path) {
    StringBuilder field = new StringBuilder();
    String parameter = "";
    for (Iterator<Path.Node> nodes = path.iterator(); nodes.hasNext(); ) {
      Path.Node node = nodes.next();
      if (node.getKind() == ElementKind.PARAMETER) {
        parameter = node.getName();
      } else if (node.getKind() != ElementKind.METHOD) {
        append(field, node);
      }
    }
    return field.isEmpty() ? parameter : field.toString();
  }

  private static void append(StringBuilder field, Path.Node node) {
    if (node.isInIterable() && node.getIndex() != null) {
      field.append('[').append(node.getIndex()).append(']');
    } else if (node.isInIterable() && node.getKey() != null) {
      field.append('.').append(node.getKey());
    }
    if (node.getKind() != ElementKind.CONTAINER_ELEMENT && node.getName() != null) {
      field.append(field.isEmpty() ? "" : ".").append(node.getName());
    }
  }
}
