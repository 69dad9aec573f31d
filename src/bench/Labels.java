import com.lowagie.text.Document;
import com.lowagie.text.PageSize;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.barreltally.documents.LabelSheet;
import org.barreltally.documents.LabelText;
import org.barreltally.documents.LengthUnit;
import org.barreltally.documents.Paper;
import org.barreltally.documents.Papers;
import org.barreltally.documents.SheetRun;
import uk.org.okapibarcode.backend.Code128;
import uk.org.okapibarcode.backend.QrCode;
import uk.org.okapibarcode.backend.Symbol;

/**
 * Draws the same labels by the program's own code and by bare OpenPDF, in turn, and says how long
 * each took. Bare stamped: the label drawn once and placed, as the program does. Bare anew: every
 * label drawn again, as the library does unless told otherwise; its codes are worked out once. Run by labels.sh.
 */
public final class Labels {

  private static final int COUNT = 10_000;
  private static final String LOT = "P260620-1";

  private static final LabelSheet SHEET =
      new LabelSheet(
          "bench",
          "bench",
          Paper.LETTER,
          LengthUnit.IN,
          2,
          5,
          new BigDecimal("0.15625"),
          new BigDecimal("0.5"),
          BigDecimal.valueOf(4),
          BigDecimal.valueOf(2),
          new BigDecimal("0.1875"),
          BigDecimal.ZERO);

  private static final Symbol QR = new QrCode();
  private static final Symbol BARS = new Code128();

  private static final LabelText TEXT =
      new LabelText(
          "Pure maple syrup",
          "Amber, rich taste",
          List.of("16 fl oz (473 mL) · 1 pt"),
          9,
          "Thistle Ridge Sugarhouse",
          List.of("412 Ridge Lane", "Millbrook Hollow"),
          List.of("Lot " + LOT, "Packed 2026-06-20", "Best by 2028-06-20"),
          LOT,
          null,
          LOT);

  public static void main(String[] arguments) throws Exception {
    int rounds = arguments.length == 0 ? 15 : Integer.parseInt(arguments[0]);
    List<Callable<byte[]>> ways =
        List.of(() -> Papers.labels(TEXT, SheetRun.of(SHEET, 1, COUNT)), () -> bare(true), () -> bare(false));
    long[][] took = new long[ways.size()][rounds];
    int[] bytes = new int[ways.size()];
    for (int round = -5; round < rounds; round++) { // the first five warm up
      for (int way = 0; way < ways.size(); way++) {
        long from = System.nanoTime();
        bytes[way] = ways.get(way).call().length;
        took[way][Math.max(round, 0)] = System.nanoTime() - from;
      }
    }
    double[] ms = Arrays.stream(took).mapToDouble(Labels::median).toArray();
    System.out.printf("%d labels, median of %d rounds after 5 to warm up%n", COUNT, rounds);
    System.out.printf("  program      %7.1f ms, %d kB%n", ms[0], bytes[0] / 1024);
    System.out.printf("  bare stamped %7.1f ms, %d kB: ratio %.2f%n", ms[1], bytes[1] / 1024, ms[0] / ms[1]);
    System.out.printf("  bare anew    %7.1f ms, %d kB: ratio %.3f%n", ms[2], bytes[2] / 1024, ms[0] / ms[2]);
  }

  private static double median(long[] nanoseconds) {
    long[] sorted = nanoseconds.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2] / 1e6;
  }

  private static byte[] bare(boolean stamped) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Document document = new Document(PageSize.LETTER);
    PdfWriter writer = PdfWriter.getInstance(document, out);
    document.open();
    QR.setContent(TEXT.scanned());
    BARS.setContent(TEXT.lot());
    BaseFont regular = font("LiberationSans-Regular.ttf");
    BaseFont bold = font("LiberationSans-Bold.ttf");
    PdfContentByte page = writer.getDirectContent();
    PdfTemplate label = page.createTemplate((float) SHEET.width(), (float) SHEET.height());
    if (stamped) {
      draw(label, regular, bold, 0, 0);
    }
    for (int i = 0; i < COUNT; i++) {
      int place = i % SHEET.labelsPerPage();
      if (place == 0 && i > 0) {
        document.newPage();
      }
      LabelSheet.Corner corner = SHEET.corner(place);
      if (stamped) {
        page.addTemplate(label, (float) corner.x(), (float) corner.y());
      } else {
        draw(page, regular, bold, (float) corner.x(), (float) corner.y());
      }
    }
    document.close();
    return out.toByteArray();
  }

  private static BaseFont font(String name) throws Exception {
    byte[] file = Labels.class.getClassLoader().getResourceAsStream("liberation/" + name).readAllBytes();
    return BaseFont.createFont(name, BaseFont.IDENTITY_H, true, false, file, null);
  }

  private static void draw(PdfContentByte canvas, BaseFont regular, BaseFont bold, float x, float y) {
    float line = y + 128;
    line = words(canvas, bold, 18, TEXT.product(), x, line);
    line = words(canvas, regular, 14, TEXT.grade(), x, line);
    line = words(canvas, bold, 10, TEXT.maker(), x, line);
    for (String address : TEXT.address()) {
      line = words(canvas, regular, 10, address, x, line);
    }
    for (String fact : TEXT.facts()) {
      line = words(canvas, regular, 10, fact, x, line);
    }
    words(canvas, bold, 16, TEXT.netContents().get(0), x, y + 8);
    code(canvas, QR, x + 200, y + 60, 2.4f, 2.4f);
    code(canvas, BARS, x + 190, y + 8, 0.7f, 0.6f);
  }

  private static float words(PdfContentByte canvas, BaseFont font, float size, String text, float x, float y) {
    canvas.beginText();
    canvas.setFontAndSize(font, size);
    canvas.setTextMatrix(x + 6, y);
    canvas.showText(text);
    canvas.endText();
    return y - size * 1.15f;
  }

  private static void code(PdfContentByte canvas, Symbol symbol, float x, float y, float wide, float high) {
    for (Rectangle2D bar : rectangles(symbol)) {
      canvas.rectangle(
          x + (float) bar.getX() * wide, y + (float) bar.getY() * high, (float) bar.getWidth() * wide, (float) bar.getHeight() * high);
    }
    canvas.fill();
  }

  private static List<Rectangle2D> rectangles(Symbol symbol) {
    return symbol.getRectangles().stream()
        .<Rectangle2D>map(bar -> new Rectangle2D.Double(bar.x, bar.y, bar.width, bar.height))
        .toList();
  }
}
