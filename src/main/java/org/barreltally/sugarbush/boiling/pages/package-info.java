/** The sugarhouse's log as pages. */
package org.barreltally.sugarbush.boiling.pages;
