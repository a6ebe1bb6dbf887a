package org.barsheet.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;
import org.barsheet.text.Ascii;

/**
 * Pages as one PDF (ISO 32000), its letters embedded, without dates: the same pages give the same
 * bytes.
 */
public final class PagesPdf {

  /** The unit of PDF is 1/72 inch (ISO 32000-1, 8.3.2.3). */
  private static final float POINTS_PER_MILLIMETER = 72 / 25.4f;

  /** In the place of a moment, from which a document's name in the file is made. */
  private static final long DOCUMENT = 1;

  /** Liberation Sans, as the library brings it (SIL Open Font License 1.1). */
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  /** Bold letters are the plain ones with an edge, as a share of their size. */
  private static final float BOLDER = 0.035f;

  private final PDDocument document;
  private final PDFont font;

  private PagesPdf(PDDocument document) throws IOException {
    this.document = document;
    try (InputStream in = PDDocument.class.getResourceAsStream(FONT)) {
      this.font = PDType0Font.load(document, Objects.requireNonNull(in, FONT), true);
    }
  }

  /**
   * Writes all pages.
   *
   * @param title of the document
   * @param pages at least one
   */
  public static void write(String title, List<PaperPage> pages, OutputStream out)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      PagesPdf pdf = new PagesPdf(document);
      for (PaperPage page : pages) {
        pdf.add(page);
      }
      document.getDocumentInformation().setTitle(title);
      // Asks the print dialog for 100 %.
      PDViewerPreferences asks = new PDViewerPreferences(new COSDictionary());
      asks.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      document.getDocumentCatalog().setViewerPreferences(asks);
      document.setDocumentId(DOCUMENT);
      document.save(out);
    }
  }

  private void add(PaperPage page) throws IOException {
    float width = (float) page.width() * POINTS_PER_MILLIMETER;
    float height = (float) page.height() * POINTS_PER_MILLIMETER;
    PDPage sheet = new PDPage(new PDRectangle(width, height));
    document.addPage(sheet);
    try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
      // From here on in millimeters, still upwards.
      stream.transform(Matrix.getScaleInstance(POINTS_PER_MILLIMETER, POINTS_PER_MILLIMETER));
      for (Ink ink : page.inks()) {
        draw(stream, page.height(), ink);
      }
    }
  }

  private void draw(PDPageContentStream stream, double height, Ink ink) throws IOException {
    if (ink instanceof Ink.Line line) {
      stroke(stream, line.stroke());
      stream.moveTo((float) line.x1(), (float) (height - line.y1()));
      stream.lineTo((float) line.x2(), (float) (height - line.y2()));
      stream.stroke();
    } else if (ink instanceof Ink.Ring ring) {
      stroke(stream, ring.stroke());
      circle(stream, (float) ring.x(), (float) (height - ring.y()), (float) ring.radius());
    } else if (ink instanceof Ink.Patch patch) {
      float[] color = color(patch.color());
      stream.setNonStrokingColor(color[0], color[1], color[2]);
      float bottom = (float) (height - patch.y() - patch.height());
      stream.addRect((float) patch.x(), bottom, (float) patch.width(), (float) patch.height());
      stream.fill();
    } else if (ink instanceof Ink.Words words) {
      words(stream, height, words);
    }
  }

  private static void stroke(PDPageContentStream stream, Stroke stroke) throws IOException {
    float[] color = color(stroke.color());
    stream.setStrokingColor(color[0], color[1], color[2]);
    stream.setLineWidth((float) stroke.weight());
    stream.setLineDashPattern(dashes(stroke), 0);
  }

  private static float[] dashes(Stroke stroke) {
    String[] lengths = stroke.dashes().isEmpty() ? new String[0] : stroke.dashes().split(" ", -1);
    float[] dashes = new float[lengths.length];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = Float.parseFloat(lengths[i]);
    }
    return dashes;
  }

  /** Red, green and blue, 0 to 1, of RRGGBB. */
  private static float[] color(String hex) {
    int color = Integer.parseInt(hex, 16);
    return new float[] {(color >> 16) / 255f, (color >> 8 & 0xFF) / 255f, (color & 0xFF) / 255f};
  }

  /** Four curves; 0.5523 of the radius brings them within 0.03 % of a circle. */
  private static void circle(PDPageContentStream stream, float x, float y, float r)
      throws IOException {
    float k = 0.5523f * r;
    stream.moveTo(x + r, y);
    stream.curveTo(x + r, y + k, x + k, y + r, x, y + r);
    stream.curveTo(x - k, y + r, x - r, y + k, x - r, y);
    stream.curveTo(x - r, y - k, x - k, y - r, x, y - r);
    stream.curveTo(x + k, y - r, x + r, y - k, x + r, y);
    stream.stroke();
  }

  private void words(PDPageContentStream stream, double height, Ink.Words words)
      throws IOException {
    String text = printable(words.words());
    float size = (float) (words.points() * Ink.Words.MILLIMETERS_PER_POINT);
    float length = font.getStringWidth(text) / 1000 * size;
    float back =
        switch (words.align()) {
          case START -> 0;
          case MIDDLE -> length / 2;
          case END -> length;
        };
    Matrix place =
        Matrix.getRotateInstance(
            StrictMath.toRadians(words.turned()), (float) words.x(), (float) (height - words.y()));
    place.concatenate(Matrix.getTranslateInstance(-back, 0));
    float[] ink = color(words.color());
    stream.setNonStrokingColor(ink[0], ink[1], ink[2]);
    stream.setStrokingColor(ink[0], ink[1], ink[2]);
    stream.setLineWidth(BOLDER * size);
    stream.setLineDashPattern(new float[0], 0);
    stream.beginText();
    stream.setRenderingMode(words.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
    stream.setFont(font, size);
    stream.setTextMatrix(place);
    stream.showText(text);
    stream.endText();
  }

  /**
   * A letter the font does not have is written plainly, or becomes a question mark where it has no
   * plain form; the drawings have it.
   */
  private String printable(String words) {
    StringBuilder printable = new StringBuilder();
    words
        .codePoints()
        .mapToObj(Character::toString)
        .forEach(letter -> printable.append(has(letter) ? letter : plain(letter)));
    return printable.toString();
  }

  private static String plain(String letter) {
    String plain = Ascii.line(letter);
    return plain.matches("_?") ? "?" : plain;
  }

  private boolean has(String letter) {
    try {
      font.encode(letter);
      return true;
    } catch (IOException | IllegalArgumentException missing) {
      return false;
    }
  }
}
