/** Barrels, heel vessels and bought syrup over REST. */
package org.barreltally.barrels.rest;
