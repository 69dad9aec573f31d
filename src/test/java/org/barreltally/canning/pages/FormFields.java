package org.barreltally.canning.pages;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;

/** What a form on a page holds, to be sent to an address of one of its buttons. */
final class FormFields {

  private final Map<String, String> fields = new LinkedHashMap<>();

  private FormFields() {}

  static FormFields of(Document page, String to) {
    FormFields form = new FormFields();
    ((FormElement) page.selectFirst("main form[action=" + to + "]"))
        .formData()
        .forEach(field -> form.fields.put(field.key(), field.value()));
    return form;
  }

  Map<String, String> with(String... fieldsAndTexts) {
    Map<String, String> said = new LinkedHashMap<>(fields);
    for (int n = 0; n < fieldsAndTexts.length; n += 2) {
      said.put(fieldsAndTexts[n], fieldsAndTexts[n + 1]);
    }
    return said;
  }
}
