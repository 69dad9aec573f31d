/** Net contents over REST. */
package org.barreltally.netcontents.rest;
