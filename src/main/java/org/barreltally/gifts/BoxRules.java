package org.barreltally.gifts;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.barreltally.containers.Containers;
import org.barreltally.measure.ColorClass;
import org.barreltally.measure.Dimension;
import org.barreltally.pricing.Money;
import org.barreltally.refusal.InvalidField;
import org.barreltally.refusal.Refusal.FieldError;

/** What must be said of a gift box; every field at fault is named at once. */
final class BoxRules {

  private static final int NAME_MAX = 80;
  private static final int CONTENTS_MAX = 20;
  private static final int COUNT_MAX = 48;
  private static final int SUBSTITUTES_MAX = 8;

  private final List<FieldError> errors = new ArrayList<>();
  private final Containers containers;

  private BoxRules(Containers containers) {
    this.containers = containers;
  }

  /**
   * @throws InvalidField naming every field that is missing, malformed or out of its range
   */
  static void check(MakeBox said, Containers containers) {
    BoxRules rules = new BoxRules(containers);
    rules.text(said.name(), "name", "Give the box a name of at most " + NAME_MAX + " characters.");
    rules.price(said.price());
    rules.contents(said.contents());
    rules.wrapping(said.carton(), "carton");
    rules.wrapping(said.ribbon(), "ribbon");
    rules.wrapping(said.card(), "card");
    if (!rules.errors.isEmpty()) {
      throw new InvalidField(rules.errors);
    }
  }

  private void price(Money price) {
    require(
        price != null && price.signum() >= 0,
        "price",
        "Give the price of one box, for example 28.00 USD; not less than nothing.");
  }

  private void contents(List<Content> contents) {
    boolean some = contents != null && !contents.isEmpty() && contents.size() <= CONTENTS_MAX;
    require(
        some, "contents", "Say what is in the box: 1 to " + CONTENTS_MAX + " sizes and grades.");
    for (int i = 0; some && i < contents.size(); i++) {
      content(contents.get(i), "contents[" + i + "]");
    }
  }

  private void content(Content content, String path) {
    if (content == null) {
      require(false, path, "Give container, grade and count.");
      return;
    }
    jar(content.container(), content.grade(), path);
    require(
        content.count() != null && content.count() >= 1 && content.count() <= COUNT_MAX,
        path + ".count",
        "Give a whole number of jars from 1 to " + COUNT_MAX + ".");
    List<Jar> substitutes = content.substitutes() == null ? List.of() : content.substitutes();
    require(
        substitutes.size() <= SUBSTITUTES_MAX,
        path + ".substitutes",
        "Give at most " + SUBSTITUTES_MAX + " substitutes, the first choice first.");
    for (int i = 0; i < Math.min(substitutes.size(), SUBSTITUTES_MAX); i++) {
      Jar other = substitutes.get(i);
      String at = path + ".substitutes[" + i + "]";
      if (other == null) {
        require(false, at, "Give container and grade.");
      } else {
        jar(other.container(), other.grade(), at);
        require(
            !Set.copyOf(substitutes.subList(0, i)).contains(other) && !other.equals(content.jar()),
            at,
            "This is a choice already. Leave it out.");
      }
    }
  }

  private void jar(String container, ColorClass grade, String path) {
    require(
        containers.find(container).isPresent(),
        path + ".container",
        "Give the code of a container, for example HP; GET /api/containers lists them.");
    require(
        grade != null && grade != ColorClass.PROCESSING,
        path + ".grade",
        "Give golden, amber, dark or very-dark; processing grade is not for retail.");
  }

  private void wrapping(Wrapping wrapping, String field) {
    if (wrapping == null) {
      return;
    }
    text(wrapping.name(), field + ".name", "Name it in at most " + NAME_MAX + " characters.");
    require(
        wrapping.weight() == null
            || wrapping.weight().unit().dimension() == Dimension.MASS
                && wrapping.weight().signum() >= 0,
        field + ".weight",
        "Give its weight in lb, oz, kg or g, or leave it out.");
  }

  private void text(String text, String field, String mend) {
    require(
        text != null
            && !text.isBlank()
            && text.length() <= NAME_MAX
            && text.codePoints().noneMatch(Character::isISOControl),
        field,
        mend);
  }

  private void require(boolean met, String field, String mend) {
    if (!met) {
      errors.add(new FieldError(field, mend));
    }
  }
}
