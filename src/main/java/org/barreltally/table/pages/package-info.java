/** The pages about phones, and the parts of the phone's application that are made when asked. */
package org.barreltally.table.pages;
