/** Reconciliation over REST. */
package org.barreltally.reconciliation.rest;
