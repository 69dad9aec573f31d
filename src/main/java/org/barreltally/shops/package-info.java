/**
 * Shops that sell the maker's jars on consignment: what was brought, what a count says was sold or
 * is missing, and what is due by the agreed terms. A shop is a place of the ledger; what it has not
 * sold is still the maker's.
 */
package org.barreltally.shops;
