/**
 * Net contents of packed jars, checked by weight in one of two manners, the European and the US
 * one. Each has its own tables and tests, and they are never mixed. The check helps the maker's
 * records; the weights-and-measures office decides.
 */
package org.barreltally.netcontents;
