/** How shows are kept, for this capability alone. */
package org.barreltally.shows.internal;
