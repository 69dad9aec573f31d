/** Shows over REST. */
package org.barreltally.shows.rest;
