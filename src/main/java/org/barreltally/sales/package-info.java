/**
 * Sales: at a show's table, at the farm gate, by post and wholesale, each under an id its device
 * made. Knows places, not shows.
 */
package org.barreltally.sales;
