/**
 * What to look at in the storerooms: jars and barrels by age and colour, holds that wait, promises
 * and supplies that fall short, rooms that are warm. It advises; people look and decide.
 */
package org.barreltally.watch;
