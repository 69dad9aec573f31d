/** How shops are kept, for this capability alone. */
package org.barreltally.shops.internal;
