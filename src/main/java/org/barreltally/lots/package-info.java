/**
 * Lots of syrup: what each is made of, its grade, whether it is held, and where all of it went. A
 * lot in bulk stands in one vessel; a packed lot is the jars of one canning run.
 */
package org.barreltally.lots;
