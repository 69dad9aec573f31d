/** Costs in the database, and the book as the reckoning of costs reads it. */
package org.barreltally.cost.internal;
