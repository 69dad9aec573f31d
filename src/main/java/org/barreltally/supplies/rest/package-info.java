/** Supplies over REST. */
package org.barreltally.supplies.rest;
