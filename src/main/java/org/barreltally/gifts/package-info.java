/**
 * Gift boxes as recipes, gift orders with a life of its own for each recipient, and what can be
 * promised for them. Names, addresses and card texts of people are kept where they can be removed.
 */
package org.barreltally.gifts;
