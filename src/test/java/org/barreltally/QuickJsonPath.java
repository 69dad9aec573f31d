package org.barreltally;

import io.restassured.path.json.JsonPath;
import java.util.Optional;

/** An answer's JSON whose simple paths are looked up without a script; see {@link QuickReading}. */
final class QuickJsonPath extends JsonPath {

  private final String json;
  private Object root;

  QuickJsonPath(String json) {
    super(json);
    this.json = json;
  }

  /** All other looks of REST Assured begin with this one. */
  @Override
  @SuppressWarnings("unchecked")
  public <T> T get(String path) {
    if (root == null) {
      root = super.get("$");
    }
    Optional<SimplePath.Found> found = SimplePath.in(root, path);
    return found.isPresent() ? (T) found.get().value() : super.get(path);
  }

  /** Paths from somewhere within are left to REST Assured. */
  @Override
  public JsonPath setRootPath(String path) {
    return from(json).setRootPath(path);
  }
}
