/**
 * Papers as pages: the labels of a lot, the log of their prints, and the sheets to print on. Codes
 * drawn on pages.
 */
package org.barreltally.documents.pages;
