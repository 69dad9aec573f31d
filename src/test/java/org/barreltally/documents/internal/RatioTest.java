package org.barreltally.documents.internal;

import com.lowagie.text.*;
import com.lowagie.text.pdf.*;
import java.io.*;
import java.math.BigDecimal;
import java.util.List;
import org.barreltally.documents.*;
import org.junit.jupiter.api.Test;
import uk.org.okapibarcode.backend.*;

class RatioTest {
  static final int N = 10000;

  static BigDecimal d(String s) {
    return new BigDecimal(s);
  }

  static LabelSheet sheet =
      new LabelSheet(
          "s",
          "s",
          Paper.LETTER,
          LengthUnit.IN,
          2,
          5,
          d("0.15625"),
          d("0.5"),
          d("4"),
          d("2"),
          d("0.1875"),
          d("0"));
  static String[] lines = {
    "Pure maple syrup",
    "Amber, rich taste",
    "Thistle Ridge Sugarhouse",
    "412 Ridge Lane",
    "Millbrook Hollow, VT 05000",
    "Lot P260620-1",
    "Packed 2026-06-20",
    "16 fl oz (473 mL) · 1 pt"
  };

  static BaseFont f(String n) throws Exception {
    return BaseFont.createFont(
        n,
        BaseFont.IDENTITY_H,
        true,
        false,
        RatioTest.class.getClassLoader().getResourceAsStream("liberation/" + n).readAllBytes(),
        null);
  }

  static void one(PdfContentByte c, BaseFont r, BaseFont b, float x, float y, Symbol q, Symbol k) {
    for (int i = 0; i < lines.length; i++) {
      c.beginText();
      c.setFontAndSize(i % 2 == 0 ? b : r, 10);
      c.setTextMatrix(x + 6, y + 120 - i * 12);
      c.showText(lines[i]);
      c.endText();
    }
    for (Symbol s : new Symbol[] {q, k}) {
      for (var t : s.getRectangles())
        c.rectangle(
            (float) (x + 200 + t.x * .7),
            (float) (y + 20 + t.y),
            (float) (t.width * .7),
            (float) t.height);
      c.fill();
    }
  }

  static int bare(boolean stamp) throws Exception {
    var out = new ByteArrayOutputStream();
    var doc = new Document(PageSize.LETTER);
    var w = PdfWriter.getInstance(doc, out);
    doc.open();
    BaseFont r = f("LiberationSans-Regular.ttf"), b = f("LiberationSans-Bold.ttf");
    var q = new QrCode();
    q.setContent("P260620-1");
    var k = new Code128();
    k.setContent("P260620-1");
    PdfTemplate t = w.getDirectContent().createTemplate(288, 144);
    if (stamp) one(t, r, b, 0, 0, q, k);
    for (int i = 0; i < N; i++) {
      if (i % 10 == 0 && i > 0) doc.newPage();
      float x = 11 + (i % 2) * 300, y = 612 - (i % 10 / 2) * 144;
      if (stamp) w.getDirectContent().addTemplate(t, x, y);
      else one(w.getDirectContent(), r, b, x, y, q, k);
    }
    doc.close();
    return out.size();
  }

  @Test
  void ratio() throws Exception {
    var text =
        new LabelText(
            lines[0],
            lines[1],
            List.of(lines[7]),
            9,
            lines[2],
            List.of(lines[3], lines[4]),
            List.of(lines[5], lines[6]),
            "P260620-1",
            "P260620-1");
    for (int round = 0; round < 7; round++) {
      long a = System.nanoTime();
      int s1 = LabelPdf.render(text, sheet, 1, N).length;
      long b = System.nanoTime();
      int s2 = bare(true);
      long c = System.nanoTime();
      int s3 = bare(false);
      long e = System.nanoTime();
      System.out.printf(
          "RATIO ours %.0f ms %d B, bare stamped %.0f ms %d B, bare each %.0f ms %d B%n",
          (b - a) / 1e6, s1, (c - b) / 1e6, s2, (e - c) / 1e6, s3);
    }
  }
}
