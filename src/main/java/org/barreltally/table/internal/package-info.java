/** The rows behind the show table's phones and leads. */
package org.barreltally.table.internal;
