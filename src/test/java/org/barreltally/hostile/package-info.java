/** Wrong, hostile and border-line requests without end, from a seed, against the built program. */
package org.barreltally.hostile;
