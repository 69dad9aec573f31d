/** How tables are read from the catalog, written as CSV, loaded again and put in place. */
package org.barreltally.keeping.internal;
