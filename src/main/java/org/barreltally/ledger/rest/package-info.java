/** The ledger as JSON: movements, invariants, what can be promised, places. */
package org.barreltally.ledger.rest;
