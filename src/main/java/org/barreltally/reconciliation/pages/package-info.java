/** The year's balance as a page. */
package org.barreltally.reconciliation.pages;
