/** Where every gallon went: the year's balance in mass, and what it leaves unexplained. */
package org.barreltally.reconciliation;
