package org.barreltally.stock.pages;

import jakarta.inject.Inject;
import java.util.List;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.stock.StockRow;
import org.barreltally.stock.rest.StockApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.JarRow;
import org.barreltally.web.pages.WholeList;

/** The jars that stand in a place, for pages on which some of them are chosen. */
@jakarta.enterprise.context.ApplicationScoped
public class RoomJars {

  private static final int PLACES_MAX = 1_000;

  private final StockApi stock;
  private final Places places;

  @Inject
  RoomJars(StockApi stock, Places places) {
    this.stock = stock;
    this.places = places;
  }

  /** Own rooms from which jars may be taken by hand. */
  public List<Choice> rooms() {
    return places.list(null, PLACES_MAX).stream()
        .filter(place -> place.kind() == Place.Kind.HOME && !place.setAside())
        .map(place -> new Choice(place.code(), place.name()))
        .toList();
  }

  /** Jars of a known lot that stand there, by size and lot. */
  public List<JarRow> at(String place) {
    return WholeList.of((limit, after) -> stock.list(place, null, null, null, limit, after))
        .stream()
        .filter(row -> row.kind() == StockRow.Kind.CONTAINER)
        .filter(row -> row.lot() != null && row.onHand() > 0)
        .map(
            row ->
                JarRow.of(
                    row.container(),
                    row.grade() == null ? null : row.grade().code(),
                    row.lot(),
                    row.onHand(),
                    row.held()))
        .toList();
  }
}
