/** Canning as pages: thought through while somebody types, looked at once more, recorded. */
package org.barreltally.canning.pages;
