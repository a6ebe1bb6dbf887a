package org.barsheet.movie;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.movie.GuideMoment.State;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;

/**
 * Draws a guide video's frames: bar and beat large at the left, at the right what of the
 * performer's camera is seen, and below whether they are seen. Nothing flashes: from frame to frame
 * only small parts change.
 */
final class GuidePainter {

  static final int WIDTH = 854;
  static final int HEIGHT = 480;

  private static final Color GROUND = new Color(0x2B3036);
  private static final Color NEUTRAL = new Color(0x8A939C);
  private static final Color UNSEEN = new Color(0x4A525B);
  private static final int MARGIN = 24;
  private static final int BOTTOM = 118;
  private static final int RIGHT = 300;
  private static final int MOST_BEATS = 12;

  private static final String CAUTION =
      "! Small parts change on every beat. Flashing images can hurt people with photosensitive"
          + " epilepsy.";

  private final Performer performer;
  private final String title;

  /**
   * A painter for one performer.
   *
   * @param title of the film
   */
  GuidePainter(Performer performer, String title) {
    this.performer = performer;
    this.title = title;
  }

  void paint(Graphics2D pen, GuideMoment moment, boolean cautious) {
    pen.setColor(GROUND);
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    String part = performer.part().isEmpty() ? "" : " · " + performer.part();
    line(pen, Canvas.bold(24), performer.name() + part, MARGIN, 42, WIDTH - RIGHT - MARGIN);
    line(pen, Canvas.plain(17), title, MARGIN, 66, WIDTH - RIGHT - MARGIN);
    boolean word = moment.beats() == 0;
    line(pen, Canvas.bold(word ? 56 : 104), moment.bar(), MARGIN, 190, WIDTH - RIGHT - MARGIN);
    beats(pen, moment);
    clap(pen, moment);
    moment.opening().ifPresent(opening -> mask(pen, opening));
    below(pen, moment, cautious);
  }

  private static double line(
      Graphics2D pen, Font font, String words, double left, double baseline, double width) {
    pen.setFont(font);
    pen.setColor(Canvas.WHITE);
    String fitting = Canvas.fitting(words, pen.getFontMetrics(), width);
    pen.drawString(fitting, (float) left, (float) baseline);
    return pen.getFontMetrics().stringWidth(fitting);
  }

  /** A box a beat; the one that sounds is bright with a thick edge, so that gray tells it too. */
  private static void beats(Graphics2D pen, GuideMoment moment) {
    int shown = Math.min(MOST_BEATS, moment.beats());
    double room = WIDTH - RIGHT - 2.0 * MARGIN;
    double side = shown == 0 ? 0 : Math.min(72, (room - 8.0 * (shown - 1)) / shown);
    for (int beat = 1; beat <= shown; beat++) {
      double left = MARGIN + (beat - 1) * (side + 8);
      Rectangle2D box = new Rectangle2D.Double(left, 216, side, side);
      boolean sounds = beat == moment.beat();
      pen.setColor(sounds ? Canvas.WHITE : GROUND);
      pen.fill(box);
      pen.setColor(sounds ? Canvas.WHITE : NEUTRAL);
      pen.setStroke(Canvas.line(2));
      pen.draw(box);
      pen.setFont(Canvas.bold(side * (sounds ? 0.72 : 0.5)));
      pen.setColor(sounds ? Canvas.INK : NEUTRAL);
      String number = String.valueOf(beat);
      double width = pen.getFontMetrics().stringWidth(number);
      pen.drawString(
          number,
          (float) (left + (side - width) / 2),
          (float) (216 + side * (sounds ? 0.76 : 0.68)));
    }
  }

  private static void clap(Graphics2D pen, GuideMoment moment) {
    if (moment.clap().isEmpty()) {
      return;
    }
    Font font = Canvas.bold(moment.clapsNow() ? 40 : 20);
    double width = pen.getFontMetrics(font).stringWidth(moment.clap());
    if (moment.clapsNow()) {
      pen.setColor(Canvas.LAMP);
      pen.fill(new Rectangle2D.Double(MARGIN, 300, width + 24, 52));
      pen.setFont(font);
      pen.setColor(Canvas.INK);
      pen.drawString(moment.clap(), MARGIN + 12f, 340f);
    } else {
      line(pen, font, moment.clap(), MARGIN, 334, WIDTH - RIGHT - 2.0 * MARGIN);
    }
  }

  /** The camera's frame, with what of it is seen in the opening kept bright. */
  private void mask(Graphics2D pen, Opening opening) {
    Rect rect = opening.rect();
    boolean known = performer.clipWidth() > 0 && performer.clipHeight() > 0;
    boolean upright = rect.height() >= rect.width();
    int wide = known ? performer.clipWidth() : upright ? 1080 : 1920;
    int high = known ? performer.clipHeight() : upright ? 1920 : 1080;
    double scale = Math.min((RIGHT - 2.0 * MARGIN) / wide, (HEIGHT - BOTTOM - 72.0) / high);
    double left = WIDTH - RIGHT / 2.0 - wide * scale / 2;
    double top = 20;
    ClipCrop crop = ClipCrop.of(wide, high, rect);
    Shape camera = new Rectangle2D.Double(left, top, wide * scale, high * scale);
    Shape seen =
        new Rectangle2D.Double(
            left + crop.left() * scale,
            top + crop.top() * scale,
            crop.width() * scale,
            crop.height() * scale);
    pen.setColor(UNSEEN);
    pen.fill(camera);
    pen.setColor(NEUTRAL);
    pen.fill(seen);
    pen.setColor(Canvas.WHITE);
    pen.setStroke(Canvas.dashes(3));
    pen.draw(seen);
    pen.setStroke(Canvas.line(1));
    pen.draw(camera);
    String words = "seen: inside the dashes";
    double width = pen.getFontMetrics(Canvas.plain(16)).stringWidth(words);
    double middle = WIDTH - RIGHT / 2.0 - width / 2;
    line(pen, Canvas.plain(16), words, middle, top + high * scale + 24, RIGHT);
  }

  private void below(Graphics2D pen, GuideMoment moment, boolean cautious) {
    boolean dark = moment.state() == State.NOT_SEEN;
    pen.setColor(dark ? Canvas.INK : moment.state() == State.READY ? Canvas.LAMP : Canvas.WHITE);
    pen.fillRect(0, HEIGHT - BOTTOM, WIDTH, BOTTOM);
    pen.setColor(dark ? Canvas.WHITE : Canvas.INK);
    double base = HEIGHT - BOTTOM;
    pen.setFont(Canvas.bold(44));
    String headline =
        switch (moment.state()) {
          case NOT_SEEN -> "Not seen";
          case READY -> "GET READY";
          case SEEN -> "YOU ARE SEEN";
        };
    pen.drawString(headline, MARGIN, (float) (base + 52));
    pen.setFont(Canvas.bold(24));
    String words = cautious ? CAUTION : moment.told();
    if (cautious) {
      pen.setFont(Canvas.plain(18));
    }
    pen.drawString(
        Canvas.fitting(words, pen.getFontMetrics(), WIDTH - 2.0 * MARGIN),
        MARGIN,
        (float) (base + 92));
  }
}
