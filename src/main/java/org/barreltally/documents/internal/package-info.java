/** How papers are drawn and what is kept of them, for this capability alone. */
package org.barreltally.documents.internal;
