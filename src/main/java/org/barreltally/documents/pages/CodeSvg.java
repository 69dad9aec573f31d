package org.barreltally.documents.pages;

import jakarta.enterprise.context.ApplicationScoped;
import org.barreltally.documents.internal.CodeImage;
import org.barreltally.web.pages.CodePicture;
import uk.org.okapibarcode.graphics.Rectangle;

/**
 * QR codes as SVG within a page: black on white, whatever the page's colours, quiet zone included.
 */
@ApplicationScoped
class CodeSvg implements CodePicture {

  @Override
  public String svg(String content, String words) {
    CodeImage code = CodeImage.qr(content);
    StringBuilder path = new StringBuilder();
    for (Rectangle dark : code.rectangles()) {
      path.append(
          "M%s %sh%sv%sh-%sz"
              .formatted(
                  number(code.left() + dark.x),
                  number(code.below() + dark.y),
                  number(dark.width),
                  number(dark.height),
                  number(dark.width)));
    }
    return """
        <svg xmlns="http://www.w3.org/2000/svg" role="img" class="code" viewBox="0 0 %1$s %2$s" width="260" height="260" shape-rendering="crispEdges">\
        <title>%3$s</title><rect width="%1$s" height="%2$s" fill="#fff"/><path d="%4$s" fill="#000"/></svg>"""
        .formatted(number(code.across()), number(code.down()), escaped(words), path);
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
