/**
 * What stands where, as people see it on the shelf: lists of jars and vessels, carrying jars,
 * writing them off, counting, and entering what was there before the book began.
 */
package org.barreltally.stock;
