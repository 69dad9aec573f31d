/** The sizes syrup is packed in, as pages. */
package org.barreltally.containers.pages;
