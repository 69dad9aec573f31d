/** What the watch reads and keeps in the database, for this capability alone. */
package org.barreltally.watch.internal;
