/** Shares over REST. */
package org.barreltally.shares.rest;
