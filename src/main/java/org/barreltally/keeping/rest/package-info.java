/** Backups over REST, for the owner alone. */
package org.barreltally.keeping.rest;
