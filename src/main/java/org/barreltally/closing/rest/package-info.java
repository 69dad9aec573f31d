/** Years of the book over REST. */
package org.barreltally.closing.rest;
