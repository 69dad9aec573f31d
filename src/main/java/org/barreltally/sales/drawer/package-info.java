/** What a cash drawer should hold, and what may explain a difference. Pure arithmetic. */
package org.barreltally.sales.drawer;
