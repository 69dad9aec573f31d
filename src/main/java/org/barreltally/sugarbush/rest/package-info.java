/** Leases and landowners over REST. */
package org.barreltally.sugarbush.rest;
