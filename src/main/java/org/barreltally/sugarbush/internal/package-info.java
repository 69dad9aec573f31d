/** How leases are kept, for this capability alone. */
package org.barreltally.sugarbush.internal;
