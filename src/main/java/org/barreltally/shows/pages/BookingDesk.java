package org.barreltally.shows.pages;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.barreltally.containers.Containers;
import org.barreltally.ledger.Place;
import org.barreltally.ledger.Places;
import org.barreltally.pricing.rest.PriceListsApi;
import org.barreltally.shows.ShowState;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;

/** What the forms about shows offer to choose from. */
@ApplicationScoped
class BookingDesk {

  private static final int MOST = 500;

  private final PriceListsApi priceLists;
  private final Containers containers;
  private final Places places;
  private final PageFarm farm;

  @Inject
  BookingDesk(PriceListsApi priceLists, Containers containers, Places places, PageFarm farm) {
    this.priceLists = priceLists;
    this.containers = containers;
    this.places = places;
    this.farm = farm;
  }

  /**
   * The newest version of each price list that was not withdrawn.
   *
   * @param booked what is offered whatever became of it; null for none
   */
  List<Choice> priceLists(UUID booked) {
    return WholeList.of((limit, after) -> priceLists.list(null, limit, after)).stream()
        .filter(
            list ->
                list.id().equals(booked)
                    || list.replacedBy() == null && list.withdrawnFrom() == null)
        .map(list -> new Choice(list.id().toString(), list.name()))
        .toList();
  }

  /** The states a show may be booked in. */
  List<Choice> firstStates() {
    return Choice.of(
        List.of(ShowState.values()).stream()
            .filter(ShowState::isBookable)
            .toArray(ShowState[]::new),
        "shows.state");
  }

  /** The sizes of jars, by code. */
  List<Choice> sizes() {
    return containers.list(null, MOST).stream()
        .map(size -> new Choice(size.code(), size.code() + " – " + size.name()))
        .toList();
  }

  /** The rooms at home, the cool room first. */
  List<Choice> rooms() {
    List<Choice> rooms = new ArrayList<>();
    places.list(null, MOST).stream()
        .filter(place -> place.kind() == Place.Kind.HOME && !place.setAside())
        .forEach(place -> rooms.add(new Choice(place.code(), place.name())));
    rooms.sort(
        java.util.Comparator.comparing(
            room -> !room.code().equals(org.barreltally.ledger.PlaceCode.COOL_ROOM)));
    return rooms;
  }

  /** The money that amounts are typed in. */
  String currency() {
    return farm.currency();
  }

  PageFarm farm() {
    return farm;
  }
}
