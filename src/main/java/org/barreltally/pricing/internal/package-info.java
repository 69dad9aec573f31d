/** How price lists and tax rates are kept, for this capability alone. */
package org.barreltally.pricing.internal;
