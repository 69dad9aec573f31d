/** Lots as pages: listed, held, graded, and their family drawn. */
package org.barreltally.lots.pages;
