/** Lots as pages: listed, held, graded, their family drawn; and the page a jar's code leads to. */
package org.barreltally.lots.pages;
