/** How the database is told which book is at hand. */
package org.barreltally.books.internal;
