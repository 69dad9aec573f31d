package org.barreltally.sugarbush.boiling;

import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** A feed, draw-off or note of a boil, whichever it is. */
record PartOf(UUID id, Reversed reversed) {

  static Optional<PartOf> find(Boil boil, UUID id) {
    return Stream.of(
            boil.feeds().stream().map(p -> new PartOf(p.id(), p.reversed())),
            boil.drawOffs().stream().map(p -> new PartOf(p.id(), p.reversed())),
            boil.notes().stream().map(p -> new PartOf(p.id(), p.reversed())))
        .flatMap(parts -> parts)
        .filter(part -> part.id().equals(id))
        .findFirst();
  }
}
