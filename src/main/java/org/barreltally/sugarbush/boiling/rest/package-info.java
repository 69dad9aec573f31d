/** The sugarhouse's log at the interface. */
package org.barreltally.sugarbush.boiling.rest;
