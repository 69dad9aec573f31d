/** What to take, over REST. */
package org.barreltally.shows.plan.rest;
