/** Settings over REST. */
package org.barreltally.settings.rest;
