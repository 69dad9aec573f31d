/** Container sizes as JSON. */
package org.barreltally.containers.rest;
