/** Gift boxes, carriers and gift orders over REST. */
package org.barreltally.gifts.rest;
