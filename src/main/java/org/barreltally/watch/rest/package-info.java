/** The watch list and storeroom temperatures over REST. */
package org.barreltally.watch.rest;
