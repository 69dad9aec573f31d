/** How shares are kept, for this capability alone. */
package org.barreltally.shares.internal;
