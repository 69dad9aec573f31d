/**
 * What the owner sets for the farm: who the maker is, whose rules apply, how good the instruments
 * are, at what temperature jars are capped. Dated, so that what held on a day stays known.
 */
package org.barreltally.settings;
