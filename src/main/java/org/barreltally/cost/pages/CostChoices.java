package org.barreltally.cost.pages;

import java.util.List;
import org.barreltally.containers.Container;
import org.barreltally.containers.rest.ContainersApi;
import org.barreltally.cost.CostKind;
import org.barreltally.shows.rest.ShowView;
import org.barreltally.shows.rest.ShowsApi;
import org.barreltally.web.pages.Choice;
import org.barreltally.web.pages.PageFarm;
import org.barreltally.web.pages.WholeList;

/** What the form of a cost offers. */
public record CostChoices(
    List<Choice> kinds, List<Choice> containers, List<Choice> shows, String currency) {

  static CostChoices of(ContainersApi containers, ShowsApi shows, PageFarm farm) {
    return new CostChoices(
        Choice.of(CostKind.values(), "costs.kind"),
        WholeList.<Container>of(containers::list).stream()
            .map(size -> new Choice(size.code(), size.code() + ", " + size.name()))
            .toList(),
        WholeList.<ShowView>of((limit, after) -> shows.list(null, null, limit, after)).stream()
            .map(
                show ->
                    new Choice(
                        show.id().toString(),
                        show.booking().name() + ", " + show.booking().starts()))
            .toList(),
        farm.currency());
  }
}
