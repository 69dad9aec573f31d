package org.barreltally.netcontents;

import java.math.BigDecimal;
import java.util.List;
import org.barreltally.settings.NetContentsRegime;

/**
 * What was weighed.
 *
 * @param container the size that was checked
 * @param lotSize how many of it the sample was drawn from
 * @param netWeights of single jars without the jar, in grams as a scale reads in air
 * @param regime in whose manner; null as the settings say
 */
public record NetContentsOrder(
    String container, Integer lotSize, List<BigDecimal> netWeights, NetContentsRegime regime) {}
