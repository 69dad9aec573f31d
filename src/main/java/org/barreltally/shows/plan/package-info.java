/**
 * What to take to a show: demand from past shows, the newsvendor's quantity, and the cut to what
 * can be promised, carried and shown. Stores nothing and moves nothing.
 */
package org.barreltally.shows.plan;
