/** Shops on consignment as pages. */
package org.barreltally.shops.pages;
