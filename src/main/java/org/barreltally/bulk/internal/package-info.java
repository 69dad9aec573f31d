/** How bulk sales are kept, for this capability alone. */
package org.barreltally.bulk.internal;
