/** Errands as pages. */
package org.barreltally.errands.pages;
