/**
 * The trees and whose they are: landowners, leases paid for in syrup, taps by date. What is handed
 * over for them is the matter of {@code shares}.
 */
package org.barreltally.sugarbush;
