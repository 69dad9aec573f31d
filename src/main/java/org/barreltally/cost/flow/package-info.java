/**
 * Pure reckoning of cost flows: pools of goods and their values, and a walk through the book that
 * carries cost along with the goods. Knows no database.
 */
package org.barreltally.cost.flow;
