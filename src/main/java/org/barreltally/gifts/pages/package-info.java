/** Gift boxes and gift orders as pages. */
package org.barreltally.gifts.pages;
