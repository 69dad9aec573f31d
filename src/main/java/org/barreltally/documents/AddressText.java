package org.barreltally.documents;

import java.util.List;

/**
 * What stands on one address label.
 *
 * @param field under which a refusal names it
 * @param lines from the top
 */
public record AddressText(String field, List<String> lines) {}
