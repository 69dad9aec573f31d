/** The pages that belong to no capability: start, sign-in's frame, errors. */
package org.barreltally.web.pages;
