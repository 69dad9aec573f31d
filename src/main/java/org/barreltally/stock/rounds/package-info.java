/**
 * Counting rounds: a place is counted by two people who see neither the book nor each other's
 * figures; what differs is counted again, and then the book follows.
 */
package org.barreltally.stock.rounds;
