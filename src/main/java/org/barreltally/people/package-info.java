/**
 * Users, their roles, passwords, access tokens and sessions. Knows how a person proves who they
 * are; how that travels over HTTP is the web layer's business. Knows nobody but refusal.
 */
package org.barreltally.people;
