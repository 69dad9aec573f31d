/**
 * The books that one program keeps: one as a rule, or one for each sugarhouse of a co-operative, a
 * schema and a role of the database each. Knows nothing of what stands in them.
 */
package org.barreltally.books;
