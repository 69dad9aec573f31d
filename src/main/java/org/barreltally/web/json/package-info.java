/** JSON that is read strictly and written plainly. */
package org.barreltally.web.json;
