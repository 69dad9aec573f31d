package org.barreltally.documents;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.barreltally.settings.FarmSettings;
import org.barreltally.sugarbush.boiling.Boil;
import org.barreltally.sugarbush.boiling.Boils;
import org.barreltally.sugarbush.boiling.DrawOffTemperatures;

/** What stands on boil logs. */
@ApplicationScoped
public class BoilLogs {

  private final Boils boils;
  private final DrawOffTemperatures temperatures;
  private final LabelSheets sheets;
  private final FarmSettings settings;

  BoilLogs(
      Boils boils, DrawOffTemperatures temperatures, LabelSheets sheets, FarmSettings settings) {
    this.boils = boils;
    this.temperatures = temperatures;
    this.sheets = sheets;
    this.settings = settings;
  }

  /**
   * The log of a boil, in the farm's time.
   *
   * @throws org.barreltally.sugarbush.boiling.UnknownEntry if there is no such boil
   */
  @Transactional
  public FormText of(UUID id) {
    Boil boil = boils.at(id);
    Maker maker = Maker.at(boil.said().startedAt(), settings);
    boolean told = boil.said().pressure() != null || boil.said().waterBoils() != null;
    BoilLog log =
        new BoilLog(
            boil,
            told ? temperatures.of(boil.said()) : null,
            maker,
            settings.at(boil.said().startedAt()).zone());
    return log.on(sheets.usualPaper(maker));
  }
}
