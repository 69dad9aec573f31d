/** Papers as pages: the labels of a lot and the log of their prints. */
package org.barreltally.documents.pages;
