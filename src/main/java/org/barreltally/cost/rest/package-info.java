/** Costs, cost of goods, margins and stock value over REST. */
package org.barreltally.cost.rest;
