/** How gift orders are kept, for this capability alone. */
package org.barreltally.gifts.internal;
