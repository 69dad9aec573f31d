/** People as pages: who signs in, in which role, and one's own password. */
package org.barreltally.people.pages;
