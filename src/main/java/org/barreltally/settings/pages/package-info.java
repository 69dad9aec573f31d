/** The settings as pages. */
package org.barreltally.settings.pages;
