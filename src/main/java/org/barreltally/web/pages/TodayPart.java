package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.util.List;

/** Something to see to, on the page of today. Capabilities give what they know. */
public interface TodayPart {

  /**
   * One thing to see to.
   *
   * @param text in plain words, with what to do
   * @param link where it is done, or null
   * @param by until when; null where no day matters
   * @param late whether that day is past
   */
  @TemplateData
  record Line(String text, String link, LocalDate by, boolean late) {}

  /** The key of its heading in {@link Words}. */
  String words();

  /** Its place on the page, the lowest first. */
  int order();

  /** What there is to see to, the most pressing first; empty while there is nothing. */
  List<Line> lines();
}
