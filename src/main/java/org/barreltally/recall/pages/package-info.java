/** Recalls and rehearsals as pages. */
package org.barreltally.recall.pages;
