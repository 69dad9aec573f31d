/** Sales as pages: listed, entered away from shows, taken back, returned. */
package org.barreltally.sales.pages;
