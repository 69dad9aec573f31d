package org.barreltally.people;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Scanner;
import org.jsoup.nodes.Element;

/** Draws a code that stands on a page and reads it with another library than wrote it. */
final class ScannedSvg {

  private ScannedSvg() {}

  static String text(Element svg) throws Exception {
    BufferedImage image = new BufferedImage(520, 520, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D paper = image.createGraphics();
    paper.setColor(Color.WHITE);
    paper.fillRect(0, 0, 520, 520);
    paper.setColor(Color.BLACK);
    paper.scale(
        520 / Double.parseDouble(svg.attr("viewBox").split(" ")[2]),
        520 / Double.parseDouble(svg.attr("viewBox").split(" ")[3]));
    Path2D dark = new Path2D.Double();
    for (String square : svg.selectFirst("path").attr("d").split("z")) {
      Scanner numbers = new Scanner(square.replaceAll("[Mhv]", " "));
      double x = Double.parseDouble(numbers.next());
      double y = Double.parseDouble(numbers.next());
      double across = Double.parseDouble(numbers.next());
      double down = Double.parseDouble(numbers.next());
      dark.append(new Rectangle2D.Double(x, y, across, down), false);
    }
    paper.fill(dark);
    return new QRCodeReader()
        .decode(new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image))))
        .getText();
  }
}
