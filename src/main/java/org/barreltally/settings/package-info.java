/**
 * What the owner sets for the farm: whose rules apply, how good the instruments are, and at what
 * temperature jars are capped.
 */
package org.barreltally.settings;
