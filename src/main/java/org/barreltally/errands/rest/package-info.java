/** Errands as JSON. */
package org.barreltally.errands.rest;
