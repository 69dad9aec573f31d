package org.barreltally.hostile;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A form of a page, as a browser finds it.
 *
 * @param page where it was found
 * @param to where it is sent
 * @param parts whether it is sent in parts, as where a file is chosen
 * @param fields in the page's order, with what they hold
 */
record PageForm(String page, String to, boolean parts, List<Field> fields) {

  /**
   * @param said what it holds, or what can be chosen in it
   * @param file whether a file is chosen in it
   */
  record Field(String name, List<String> said, boolean file) {}

  /** The forms of a page that write. */
  static List<PageForm> in(String page, Document document) {
    List<PageForm> all = new ArrayList<>();
    for (Element form : document.select("form[method=post]")) {
      List<Field> fields = new ArrayList<>();
      for (Element field : form.select("input[name], select[name], textarea[name]")) {
        fields.add(new Field(field.attr("name"), said(field), field.attr("type").equals("file")));
      }
      String to = form.attr("action");
      all.add(
          new PageForm(
              page,
              to.isEmpty() ? page : to,
              form.attr("enctype").startsWith("multipart"),
              fields));
    }
    return all;
  }

  private static List<String> said(Element field) {
    if (field.is("select")) {
      return field.select("option").eachAttr("value");
    }
    return List.of(field.is("textarea") ? field.wholeText() : field.attr("value"));
  }
}
