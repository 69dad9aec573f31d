package org.barreltally.sales;

/**
 * What became of a sale that was told.
 *
 * @param sale as it is kept: of a conflict, the one that came first
 */
public record Merged(Result result, Sale sale) {

  /** What a telling did. */
  public enum Result {
    /** It is new and kept. */
    KEPT("kept"),
    /** It was told before with the same content; nothing changed. */
    REPEATED("repeated"),
    /** Its id was told before with other content; the first counts, the other is listed. */
    CONFLICT("conflict");

    private final String code;

    Result(String code) {
      this.code = code;
    }

    public String code() {
      return code;
    }
  }
}
