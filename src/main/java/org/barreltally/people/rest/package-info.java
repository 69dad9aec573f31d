/** Tokens and the signed-in person over REST. */
package org.barreltally.people.rest;
