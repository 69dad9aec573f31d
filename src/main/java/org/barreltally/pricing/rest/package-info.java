/** Price lists and tax rates over REST. */
package org.barreltally.pricing.rest;
