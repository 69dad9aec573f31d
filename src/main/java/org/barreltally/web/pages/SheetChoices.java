package org.barreltally.web.pages;

import java.util.List;

/** The label sheets a page offers. Whoever draws papers gives them. */
public interface SheetChoices {

  /** By code. */
  List<Choice> choices();
}
