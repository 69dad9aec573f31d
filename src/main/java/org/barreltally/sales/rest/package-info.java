/** Sales over REST. */
package org.barreltally.sales.rest;
