/**
 * Canning: bulk syrup into retail sizes. A what-if works the pack sheet out and stores nothing; a
 * run stores it, makes the lot, and posts where every gram went.
 */
package org.barreltally.canning;
