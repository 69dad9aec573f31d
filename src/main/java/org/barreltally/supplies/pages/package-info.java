/** What packing uses up, as pages. */
package org.barreltally.supplies.pages;
