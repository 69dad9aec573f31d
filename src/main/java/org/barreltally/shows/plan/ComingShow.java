package org.barreltally.shows.plan;

import java.time.LocalDate;

/**
 * The show that is planned for.
 *
 * @param show what names the show over the years
 * @param day its first
 * @param days it lasts, 1 or more
 * @param visitors expected over all days, 1 or more; null where nobody said
 */
public record ComingShow(String show, LocalDate day, int days, Integer visitors) {}
