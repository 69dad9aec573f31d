/** Money: exact decimal amounts of a currency. */
package org.barreltally.pricing;
