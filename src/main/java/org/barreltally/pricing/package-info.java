/**
 * Money: exact decimal amounts of a currency. Price lists by container and grade with their deals,
 * and tax by product class, place and date.
 */
package org.barreltally.pricing;
