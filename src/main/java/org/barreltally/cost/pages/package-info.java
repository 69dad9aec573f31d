/** Costs, margins and what stock is worth as pages. */
package org.barreltally.cost.pages;
