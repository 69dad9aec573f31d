package org.barreltally.documents;

import java.util.List;

/**
 * What stands on a label.
 *
 * @param netContents ways to say them, the fullest first; the first that fits is printed
 * @param leastHeight of the lower-case o in the net contents, points of 1/72 inch
 * @param address line by line
 * @param facts lot and dates, each of which may stand on a line of its own
 * @param lot what the Code 128 says
 * @param gtin of the jar or case, 14 digits, which the Code 128 then says before the lot; may be
 *     null
 * @param scanned what the QR code says
 */
public record LabelText(
    String product,
    String grade,
    List<String> netContents,
    double leastHeight,
    String maker,
    List<String> address,
    List<String> facts,
    String lot,
    String gtin,
    String scanned) {}
