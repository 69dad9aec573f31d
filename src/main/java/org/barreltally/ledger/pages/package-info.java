/** What pages of several capabilities say of places. */
package org.barreltally.ledger.pages;
