/** Landowners, what they are owed and handed, as pages. */
package org.barreltally.shares.pages;
