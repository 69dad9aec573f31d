/** The sizes syrup is packed in, as data: jugs, glass, and what the owner adds. */
package org.barreltally.containers;
