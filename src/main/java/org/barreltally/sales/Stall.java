package org.barreltally.sales;

import java.util.UUID;

/**
 * Where something is sold.
 *
 * @param place the code of the place in the ledger that the jars leave
 * @param priceList the list that lies there; null for the channel's list of the day
 * @param taxPlace the town or region whose tax holds; null for none
 */
public record Stall(String place, Channel channel, UUID priceList, String taxPlace) {}
