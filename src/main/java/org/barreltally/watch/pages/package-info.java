/** What to look at, on the page of today. */
package org.barreltally.watch.pages;
