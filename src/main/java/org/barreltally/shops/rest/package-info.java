/** Shops over REST. */
package org.barreltally.shops.rest;
