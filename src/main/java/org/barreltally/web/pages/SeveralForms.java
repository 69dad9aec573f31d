package org.barreltally.web.pages;

import io.quarkus.qute.TemplateData;
import java.util.HashMap;
import java.util.Map;

/**
 * The forms of a page that has several: the one that was refused as it was typed, all others blank.
 */
@TemplateData
public final class SeveralForms {

  /** The hidden field that says which of them was sent. */
  public static final String FIELD = "what";

  private final Map<String, Form> forms = new HashMap<>();
  private final Form refused;

  private SeveralForms(Form refused) {
    this.refused = refused;
  }

  /** Nobody has typed in any of them. */
  public static SeveralForms blank() {
    return new SeveralForms(null);
  }

  /** One came back. */
  public static SeveralForms with(String name, Form refused) {
    SeveralForms forms = new SeveralForms(refused.marked(name));
    forms.forms.put(name, forms.refused);
    return forms;
  }

  /** A form that begins with what is known. */
  public SeveralForms beginning(String name, Form form) {
    forms.putIfAbsent(name, form.marked(name));
    return this;
  }

  /** The form of that name. */
  public Form at(String name) {
    return forms.computeIfAbsent(name, any -> Form.blank().marked(name));
  }

  /** The form that was refused; null where none was. */
  public Form refused() {
    return refused;
  }
}
