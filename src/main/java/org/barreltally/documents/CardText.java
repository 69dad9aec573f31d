package org.barreltally.documents;

/**
 * What stands on one greeting card.
 *
 * @param n number of the recipient, small in a corner, so that card and box find each other
 * @param field under which a refusal names it
 */
public record CardText(int n, String field, String text) {}
