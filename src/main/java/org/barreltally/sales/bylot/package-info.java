/**
 * Of which lots the sold jars were, reckoned from what went out, came back and was told, where jars
 * were sold or carried without writing their lot down. Pure arithmetic; knows no book.
 */
package org.barreltally.sales.bylot;
