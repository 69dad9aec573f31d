package org.barreltally.documents.internal;

/**
 * A text that is to be set.
 *
 * @param field under which a refusal names it
 * @param preferred size of type, points
 * @param least size to which it may shrink, points
 */
record Wording(String field, String text, boolean bold, double preferred, double least) {}
