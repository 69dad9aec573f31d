/** The page that a jar's code leads to, and which lots have one. */
package org.barreltally.lots.pages;
