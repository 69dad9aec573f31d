/**
 * Papers as PDF: lot labels, case labels, barrel tags and hold tags, with the sheets they are
 * printed on and the log of prints. Knows what others show; nobody depends on it. The PDF library
 * is used here alone.
 */
package org.barreltally.documents;
