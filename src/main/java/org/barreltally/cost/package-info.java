/**
 * What things cost: what the owner spent and what it belongs to, what a lot and a jar of it cost,
 * what gone goods cost and what the stock is worth by the method chosen for the year, and what was
 * earned. Reads what lies below and moves no stock. Your tax preparer decides which method is for
 * you.
 */
package org.barreltally.cost;
