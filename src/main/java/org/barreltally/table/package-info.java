/**
 * The show table on a phone: what the phone takes along, how phones are paired and cut off, jars
 * broken, tasted or given away at the table, and who would like gift boxes.
 */
package org.barreltally.table;
