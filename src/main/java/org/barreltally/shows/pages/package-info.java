/** Shows as pages: the season, one show from booking to settlement. */
package org.barreltally.shows.pages;
