/** How sales are kept. */
package org.barreltally.sales.internal;
