/** Years of the book in the database. */
package org.barreltally.closing.internal;
