/** How errands are kept and done. */
package org.barreltally.errands.internal;
