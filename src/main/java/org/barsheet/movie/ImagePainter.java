package org.barsheet.movie;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.frames.Cover;
import org.barsheet.frames.FilmFrame;
import org.barsheet.frames.SeenOpening;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Rect;

/**
 * Draws what is seen on a frame, from back to front, as the review page does: the plate, and over
 * it every opening with its hole, whoever is seen in it, and what covers it.
 */
final class ImagePainter {

  private static final Color LIGHT = new Color(0xFFF3CF);
  private static final Color CLOTH = new Color(0x5B7F95);
  private static final Color INSIDE = new Color(0xE9B949);
  private static final Color EDGE = new Color(0x12161A);
  private static final double EDGE_PIXELS = 1.6;
  private static final double SEAT_PIXELS = 2;
  private static final double LETTERS = 100;

  /** Width in pixels for which lines are given. */
  private static final double REFERENCE = 960;

  private final Sizes sizes;
  private final Rect artwork;
  private final Color cloth;
  private final Color inside;
  private final Drawings drawings;
  private final Material material;
  private final ClipShelf clips;
  private final BackgroundCache background = new BackgroundCache();

  ImagePainter(
      Sizes sizes, Artwork artwork, Drawings drawings, Material material, ClipShelf clips) {
    this.sizes = sizes;
    this.artwork = new Rect(0, 0, artwork.squaresWide(), artwork.squaresHigh());
    this.cloth = color(artwork.palette(), 0, CLOTH);
    this.inside = color(artwork.palette(), 1, INSIDE);
    this.drawings = drawings;
    this.material = material;
    this.clips = clips;
  }

  private static Color color(List<String> palette, int index, Color otherwise) {
    return index < palette.size() ? new Color(Integer.parseInt(palette.get(index), 16)) : otherwise;
  }

  /** Draws a frame's image at the top left. */
  void paint(Graphics2D pen, FilmFrame frame) {
    pen.setClip(0, 0, sizes.width(), sizes.height());
    Optional<BufferedImage> plate = photograph(frame.plate().photograph());
    boolean photographed = plate.isPresent() && frame.plate().part().isPresent();
    View view = View.of(sizes, frame.field());
    if (photographed) {
      Photographed.fill(pen, sizes, plate.orElseThrow(), frame.plate().part().orElseThrow());
    } else {
      background.paint(pen, sizes, frame, () -> drawn(frame, view));
      nameUndrawn(pen, frame);
    }
    AffineTransform upright = pen.getTransform();
    pen.transform(view.transform());
    openings(pen, frame, view, photographed);
    pen.setTransform(upright);
    pen.setClip(null);
  }

  private void openings(Graphics2D pen, FilmFrame frame, View view, boolean photographed) {
    boolean covered = false;
    for (SeenOpening opening : frame.openings()) {
      Optional<BufferedImage> photograph =
          opening.shown().flatMap(shown -> photograph(shown.photograph()));
      if (photograph.isPresent() && opening.shown().orElseThrow().part().isPresent()) {
        Photographed.lay(pen, sizes, view, photograph.get(), opening, covered);
        covered = true;
        inserts(pen, view, opening, true);
      } else {
        boolean shownAlready = opening.asDrawn() || (photographed && opening.shown().isEmpty());
        if (!shownAlready) {
          hole(pen, opening);
        }
        inserts(pen, view, opening, shownAlready);
        if (!shownAlready) {
          cover(pen, view, opening.cover());
        }
      }
    }
  }

  private Optional<BufferedImage> photograph(String name) {
    return name.isEmpty() ? Optional.empty() : material.photograph(name).flatMap(drawings::of);
  }

  /** The drawings that stand for the plate. */
  private BufferedImage drawn(FilmFrame frame, View view) {
    BufferedImage image =
        new BufferedImage(sizes.width(), sizes.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    Canvas.prepare(pen);
    pen.setColor(Canvas.INK);
    pen.fillRect(0, 0, sizes.width(), sizes.height());
    pen.transform(view.transform());
    pen.setColor(Canvas.PAPER);
    pen.fill(Shapes.of(artwork));
    frame.plate().whole().ifPresent(file -> drawing(pen, file, artwork, frame));
    frame.plate().own().ifPresent(own -> drawing(pen, own.file(), own.rect(), frame));
    pen.dispose();
    return image;
  }

  private void drawing(Graphics2D pen, Path file, Rect rect, FilmFrame frame) {
    boolean still = frame.plate().own().isPresent();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION,
        still
            ? RenderingHints.VALUE_INTERPOLATION_BICUBIC
            : RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    drawings.of(file).ifPresent(image -> pen.drawImage(image, Shapes.onto(image, rect), null));
  }

  /** A panel that nothing is drawn for yet is named in the frame instead. */
  private void nameUndrawn(Graphics2D pen, FilmFrame frame) {
    if (frame.plate().nothingDrawn()) {
      pen.setColor(Canvas.INK);
      middle(pen, Canvas.bold(sizes.height() / 6.0), frame.strip().panel(), 0.48);
      middle(pen, Canvas.plain(sizes.height() / 18.0), frame.shot().panel().action(), 0.62);
    }
  }

  private void middle(Graphics2D pen, Font font, String words, double down) {
    pen.setFont(font);
    String fitting = Canvas.fitting(words, pen.getFontMetrics(), sizes.width() * 0.9);
    double left = (sizes.width() - pen.getFontMetrics().stringWidth(fitting)) / 2.0;
    pen.drawString(fitting, (float) left, (float) (sizes.height() * down));
  }

  private void hole(Graphics2D pen, SeenOpening opening) {
    Rectangle2D rect = Shapes.of(opening.shape().opening().rect());
    pen.setPaint(light(rect));
    pen.fill(rect);
  }

  /** Light that falls off toward the edges of the hole, an ellipse as the hole is. */
  private RadialGradientPaint light(Rectangle2D rect) {
    AffineTransform toHole = AffineTransform.getTranslateInstance(rect.getX(), rect.getY());
    toHole.scale(rect.getWidth(), rect.getHeight());
    return new RadialGradientPaint(
        new Point2D.Double(0.5, 0.5),
        0.5f,
        new Point2D.Double(0.5, 0.5),
        new float[] {0, 1},
        new Color[] {LIGHT, inside},
        java.awt.MultipleGradientPaint.CycleMethod.NO_CYCLE,
        java.awt.MultipleGradientPaint.ColorSpaceType.SRGB,
        toHole);
  }

  private void cover(Graphics2D pen, View view, Cover cover) {
    Shape outline = Shapes.of(cover.outline());
    Composite before = pen.getComposite();
    AffineTransform here = pen.getTransform();
    pen.translate(0.05 + 0.25 * cover.height(), 0.06 + 0.3 * cover.height());
    pen.setComposite(AlphaComposite.SrcOver.derive((float) (0.3 * cover.solid())));
    pen.setColor(Color.BLACK);
    pen.fill(outline);
    pen.setTransform(here);
    pen.setComposite(AlphaComposite.SrcOver.derive((float) cover.solid()));
    pen.setColor(cloth);
    pen.fill(outline);
    pen.setComposite(before);
    pen.setColor(EDGE);
    pen.setStroke(Canvas.line(line(EDGE_PIXELS, view)));
    pen.draw(outline);
  }

  private double line(double pixels, View view) {
    return pixels * Math.max(0.5, sizes.width() / REFERENCE) / view.scale();
  }

  /** Whoever is seen: their clip behind the hole, or a box with their name. */
  private void inserts(Graphics2D pen, View view, SeenOpening opening, boolean coveredAlready) {
    if (opening.inserts().isEmpty()) {
      return;
    }
    Shape hole = Shapes.of(opening.shape().opening().rect());
    Shape free = coveredAlready ? Shapes.without(hole, opening.cover()) : hole;
    List<SeenOpening.Insert> waiting =
        opening.inserts().stream()
            .filter(insert -> !clip(pen, view, insert, opening, free))
            .toList();
    if (!waiting.isEmpty()) {
      String names =
          waiting.stream().map(each -> each.performer().name()).collect(Collectors.joining(", "));
      name(pen, view, opening.shape().opening().rect(), names, coveredAlready);
    }
  }

  /** Letters as shapes, at a size at which no rounding shows. */
  private static Shape outline(String names) {
    FontRenderContext exact = new FontRenderContext(new AffineTransform(), true, true);
    return Canvas.bold(LETTERS).createGlyphVector(exact, names).getOutline();
  }

  private boolean clip(
      Graphics2D pen, View view, SeenOpening.Insert insert, SeenOpening opening, Shape free) {
    Optional<BufferedImage> image = clips.frame(insert, opening.shape().opening(), view.scale());
    image.ifPresent(
        clip -> Shapes.fill(pen, free, clip, Shapes.of(opening.shape().opening().rect())));
    return image.isPresent();
  }

  /** The name in a box of short strokes, with a bright edge where it lies on a drawing. */
  private void name(Graphics2D pen, View view, Rect rect, String names, boolean onDrawing) {
    double size = Math.min(rect.height() * 0.16, rect.width() * 1.5 / Math.max(6, names.length()));
    Shape letters = outline(names);
    double scale = size / LETTERS;
    AffineTransform inPlace =
        AffineTransform.getTranslateInstance(
            rect.left() + (rect.width() - letters.getBounds2D().getMaxX() * scale) / 2,
            rect.top() + rect.height() * 0.58);
    inPlace.scale(scale, scale);
    Shape placed = inPlace.createTransformedShape(letters);
    pen.setColor(EDGE);
    pen.setStroke(Canvas.dashes(line(SEAT_PIXELS, view)));
    pen.draw(Shapes.of(rect));
    if (onDrawing) {
      pen.setColor(Color.WHITE);
      pen.setStroke(Canvas.line(0.07));
      pen.draw(placed);
    }
    pen.setColor(EDGE);
    pen.fill(placed);
  }
}
