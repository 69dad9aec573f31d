package org.barreltally.documents;

import java.math.BigDecimal;

/**
 * What is wanted on the label of a jar.
 *
 * @param panelArea of the container's principal display panel, square inches; null for a guess by
 *     its contents
 * @param gtin licensed to the owner by GS1; null for none
 * @param award whether the newest ribbon of the lot stands on it
 */
public record JarLabel(String container, BigDecimal panelArea, String gtin, boolean award) {}
