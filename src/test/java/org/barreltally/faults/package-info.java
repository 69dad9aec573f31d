/**
 * What is left of a book after faults of all sorts, against a model that knows only what was asked.
 */
package org.barreltally.faults;
