/** What phones at a show table ask, and what the owner asks about phones. */
package org.barreltally.table.rest;
