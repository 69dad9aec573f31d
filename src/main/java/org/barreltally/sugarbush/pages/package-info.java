/** Agreeing leases as a page. */
package org.barreltally.sugarbush.pages;
