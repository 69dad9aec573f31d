/** The net contents check of a run, as pages. */
package org.barreltally.netcontents.pages;
