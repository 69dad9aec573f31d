/** Canning over REST. */
package org.barreltally.canning.rest;
