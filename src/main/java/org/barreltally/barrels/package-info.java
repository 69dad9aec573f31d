/**
 * Barrels and the vessels that keep heels: filling, weighing, topping up, washing, and drawing
 * syrup from them. The tag is the vessel, the filling is the record, the lot is the syrup.
 */
package org.barreltally.barrels;
