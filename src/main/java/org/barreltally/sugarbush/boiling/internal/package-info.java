/** How the sugarhouse's log is kept, for this capability alone. */
package org.barreltally.sugarbush.boiling.internal;
