package org.barreltally.ledger.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.rest.LedgerApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.WholeList;
import org.barreltally.web.pages.Words;

/** Places of the book the way a viewer reads them. */
@ApplicationScoped
public class PlaceNames {

  /** Places that every book has, and whose names are therefore words of the program. */
  private static final Set<String> KNOWN =
      Set.of(
          "barrel-room",
          "cool-room",
          "gift-shelf",
          "gift-returns",
          "to-inspect",
          "customer",
          "bulk-buyer",
          "landowner",
          "given",
          "broken",
          "sampled",
          "discarded",
          "unexplained",
          "filter",
          "overfill",
          "boiled",
          "bought",
          "opening",
          "water");

  private final LedgerApi ledger;

  @Inject
  PlaceNames(LedgerApi ledger) {
    this.ledger = ledger;
  }

  /** All places by code. */
  public Map<String, String> all() {
    return named(places());
  }

  /** The places where own stock can stand, to choose from: at home first. */
  public List<Choice> own() {
    return places().stream()
        .filter(place -> place.kind() == Place.Kind.HOME || place.kind() == Place.Kind.OUT)
        .sorted(Comparator.comparing(LedgerApi.NamedPlace::kind))
        .map(place -> new Choice(place.code(), words(place)))
        .toList();
  }

  /** The rooms at home, to choose from. */
  public List<Choice> home() {
    return places().stream()
        .filter(place -> place.kind() == Place.Kind.HOME)
        .map(place -> new Choice(place.code(), words(place)))
        .toList();
  }

  private List<LedgerApi.NamedPlace> places() {
    return WholeList.of(ledger::places);
  }

  private static Map<String, String> named(List<LedgerApi.NamedPlace> places) {
    Map<String, String> names = new LinkedHashMap<>();
    places.forEach(place -> names.put(place.code(), words(place)));
    return names;
  }

  private static String words(LedgerApi.NamedPlace place) {
    return KNOWN.contains(place.code()) ? Words.of("places." + place.code()) : place.name();
  }
}
