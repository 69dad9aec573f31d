/** How supplies are kept, for this capability alone. */
package org.barreltally.supplies.internal;
