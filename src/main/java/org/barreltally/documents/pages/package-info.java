/** What pages ask of the papers. */
package org.barreltally.documents.pages;
