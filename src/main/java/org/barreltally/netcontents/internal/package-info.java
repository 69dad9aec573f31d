/** Checks and allowed variations in the database; for this capability alone. */
package org.barreltally.netcontents.internal;
