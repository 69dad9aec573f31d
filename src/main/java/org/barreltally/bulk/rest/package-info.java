/** Bulk sales over REST. */
package org.barreltally.bulk.rest;
