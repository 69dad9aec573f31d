/** Lots over REST: read, graded, held, released, traced. */
package org.barreltally.lots.rest;
