/**
 * The book of a season as one PDF: a chapter for each part of the book, in the order of {@link
 * org.barreltally.documents.season.SeasonBookSection#order}. A new part is one more class.
 */
package org.barreltally.documents.season;
