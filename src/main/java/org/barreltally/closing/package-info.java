/**
 * Years of the book: closing them, and what they held. A closed year takes no more postings and is
 * never opened again; what is told of it later is booked in the open year, marked as late, and a
 * mistake in it is taken back there.
 */
package org.barreltally.closing;
