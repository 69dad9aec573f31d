/** How counts are kept and opening stock is read. */
package org.barreltally.stock.internal;
