package org.barreltally.web.pages;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.barreltally.web.StartPageFigures;

/** Stands in until a capability gives the figures: nothing filled, nothing canned. */
@DefaultBean
@ApplicationScoped
class NothingYet implements StartPageFigures {

  @Override
  public List<BarrelRow> barrels() {
    return List.of();
  }

  @Override
  public List<JarRow> jars() {
    return List.of();
  }
}
