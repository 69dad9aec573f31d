/**
 * Safe-keeping: the whole book in one file that can be read without the tool, made while the
 * program runs, kept in a folder and at a second place, and restored into an empty installation.
 * Knows the ledger's invariants and nothing else of the trade: the tables it finds in the catalog.
 */
package org.barreltally.keeping;
