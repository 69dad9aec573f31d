/** Years of the book as pages. */
package org.barreltally.closing.pages;
