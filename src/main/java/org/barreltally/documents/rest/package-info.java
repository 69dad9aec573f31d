/** Papers over REST. */
package org.barreltally.documents.rest;
