/** How a rule says no: the one kind of exception a person is meant to read. Knows nobody. */
package org.barreltally.refusal;
