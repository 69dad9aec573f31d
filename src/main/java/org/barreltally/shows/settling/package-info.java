/**
 * Settles shows: what was sold, what the drawer should hold, what the organiser gets, what is left.
 */
package org.barreltally.shows.settling;
