/** Recalls in the database. */
package org.barreltally.recall.internal;
