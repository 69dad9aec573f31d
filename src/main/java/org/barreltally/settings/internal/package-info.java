/** Settings in the database; for this capability alone. */
package org.barreltally.settings.internal;
