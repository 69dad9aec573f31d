/** Stock, counts and opening stock over HTTP. */
package org.barreltally.stock.rest;
