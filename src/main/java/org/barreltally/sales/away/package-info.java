/** Sales away from shows, their papers, and jars that buyers bring back. */
package org.barreltally.sales.away;
