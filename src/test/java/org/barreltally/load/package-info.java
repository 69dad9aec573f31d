/** Many people at once on several copies of the program, counted afterwards. */
package org.barreltally.load;
