/** Prices as pages: lists by audience, a list with its deals, rates of tax. */
package org.barreltally.pricing.pages;
