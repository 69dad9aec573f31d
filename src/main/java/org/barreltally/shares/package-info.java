/** What landowners are owed in syrup, what they were handed, and what is carried on. */
package org.barreltally.shares;
