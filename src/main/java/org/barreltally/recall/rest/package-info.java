/** Recalls over REST. */
package org.barreltally.recall.rest;
