/** How the book is summed up, for this capability alone. */
package org.barreltally.reconciliation.internal;
