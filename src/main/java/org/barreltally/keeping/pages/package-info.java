/** What pages say about backups. */
package org.barreltally.keeping.pages;
