package org.barreltally.gifts;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What an address must be; what is wrong is noted under the path of the address. */
final class AddressRules {

  private static final int LINES_MAX = 4;
  private static final int PART_MAX = 60;
  private static final int POSTCODE_MAX = 12;

  private final Faults faults;

  AddressRules(Faults faults) {
    this.faults = faults;
  }

  /** The address with its country as two letters; null where something is wrong with it. */
  Address read(Address said, String path) {
    int before = faults.count();
    lines(said.lines(), path + ".lines");
    faults.text(said.town(), PART_MAX, false, path + ".town", "Give the town.");
    faults.text(said.region(), PART_MAX, true, path + ".region", "Give the state or province.");
    Optional<String> country = Countries.code(said.country());
    faults.require(
        country.isPresent(),
        path + ".country",
        "Give the country by its two letters of ISO 3166-1, for example US.");
    if (country.isEmpty()) {
      return null;
    }
    AddressForm form = AddressForm.of(country.get());
    String postcode = said.postcode() == null ? null : tidy(said.postcode(), country.get());
    faults.require(
        said.region() != null && !said.region().isBlank() || !form.needed().contains("region"),
        path + ".region",
        "Addresses in " + country.get() + " need a state or province.");
    postcode(postcode, form, country.get(), path + ".postcode");
    return faults.count() > before
        ? null
        : new Address(
            said.lines().stream().map(String::strip).toList(),
            said.town().strip(),
            said.region() == null || said.region().isBlank() ? null : said.region().strip(),
            postcode == null || postcode.isEmpty() ? null : postcode,
            country.get());
  }

  private void lines(List<String> lines, String path) {
    boolean some =
        lines != null && !lines.isEmpty() && lines.size() <= LINES_MAX && !Faults.hasGap(lines);
    faults.require(
        some, path, "Give 1 to " + LINES_MAX + " lines: street and house, or post office box.");
    for (int i = 0; some && i < lines.size(); i++) {
      faults.text(
          lines.get(i),
          PART_MAX,
          false,
          path + "[" + i + "]",
          "Give one line of 1 to " + PART_MAX + " characters.");
    }
  }

  private void postcode(String postcode, AddressForm form, String country, String path) {
    boolean none = postcode == null || postcode.isEmpty();
    if (none) {
      faults.require(
          !form.needed().contains("postcode"),
          path,
          "Addresses in " + country + " need a postcode, for example " + form.example() + ".");
      return;
    }
    boolean fits =
        form.postcode() == null
            ? postcode.length() <= POSTCODE_MAX
            : form.postcode().matcher(postcode).matches();
    faults.require(
        fits,
        path,
        form.example() == null
            ? "Give a postcode of at most " + POSTCODE_MAX + " characters."
            : "This is no postcode of " + country + ". They look like " + form.example() + ".");
  }

  /** In capitals, with the blank where the country writes one. */
  private static String tidy(String said, String country) {
    String capitals = said.strip().toUpperCase(Locale.ROOT).replaceAll("\\s+", " ");
    String close = capitals.replace(" ", "");
    return switch (country) {
      case "CA", "SE" -> close.replaceFirst("^(.{3})(.+)$", "$1 $2");
      case "GB" -> close.replaceFirst("^(.{2,4})(.{3})$", "$1 $2");
      case "NL" -> close.replaceFirst("^(.{4})(.{2})$", "$1 $2");
      default -> capitals;
    };
  }
}
