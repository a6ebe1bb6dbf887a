package org.barsheet.artwork;

import java.util.Optional;
import org.barsheet.clock.FrameSpan;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Rect;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/**
 * What the camera sees of the artwork on each frame of a shot, and where a part of the artwork lies
 * in the frame. Nothing is rounded; whoever prints a pixel rounds it, once.
 *
 * <p>A moving camera goes from the field of the shot's first frame to that of its last. Every edge
 * of the field goes a straight way, and its width changes by the same factor in equal steps, so
 * that a push-in seems to go at one speed: {@code W = W₀·(W₁/W₀)^u}, the share of the way {@code s
 * = (W₀ − W)/(W₀ − W₁)}, or {@code s = u} where the width stays. {@code u} is the share of the time
 * gone, bent by where the camera is slow (plain arithmetic of a move at constant ratio).
 *
 * @param frames of the shot, at least one
 * @param field what the plan asks the camera to see
 * @param width of the frame in pixels
 * @param height of the frame in pixels
 */
public record Framing(FrameSpan frames, Field field, int width, int height) {

  public Framing {
    if (frames.length() < 1 || width < 1 || height < 1) {
      throw new IllegalArgumentException("a shot has a frame or more, a frame a pixel or more");
    }
  }

  /** The framing of a shot; empty where its panel does not say what the camera sees. */
  public static Optional<Framing> of(TimingSheet timing, Shot shot) {
    Film film = timing.plan().film();
    return shot.panel()
        .field()
        .map(field -> new Framing(shot.frames(), field, film.width(), film.height()));
  }

  /**
   * What the camera sees on a film frame, in squares of the artwork.
   *
   * @throws IllegalArgumentException if the frame is not one of the shot's
   */
  public Rect fieldAt(long frame) {
    double way = way(frame);
    Rect from = field.from();
    Rect to = field.to();
    return new Rect(
        between(from.left(), to.left(), way),
        between(from.top(), to.top(), way),
        between(from.width(), to.width(), way),
        between(from.height(), to.height(), way));
  }

  /** Exact at both ends. */
  private static double between(double from, double to, double way) {
    return from * (1 - way) + to * way;
  }

  /** Share of the way gone on a frame: 0 on the shot's first frame, 1 on its last. */
  private double way(long frame) {
    if (!frames.contains(frame)) {
      throw new IllegalArgumentException("frame " + frame + " is not in " + frames);
    }
    long steps = frames.length() - 1;
    if (steps == 0 || !field.isMoving()) {
      return 0;
    }
    double gone = field.slow().progress((double) (frame - frames.start()) / steps);
    double ratio = StrictMath.log(field.to().width() / field.from().width());
    return ratio == 0 ? gone : StrictMath.expm1(gone * ratio) / StrictMath.expm1(ratio);
  }

  /**
   * Where a part of the artwork lies in the frame on a film frame.
   *
   * @param part in squares of the artwork: an opening's rectangle
   * @throws IllegalArgumentException if the frame is not one of the shot's
   */
  public FrameRect inFrame(Rect part, long frame) {
    Rect seen = fieldAt(frame);
    double across = width / seen.width();
    double down = height / seen.height();
    return new FrameRect(
        (part.left() - seen.left()) * across,
        (part.top() - seen.top()) * down,
        part.width() * across,
        part.height() * down);
  }

  /** Pixels of the frame to one square of the artwork on a film frame. */
  public double pixelsPerSquare(long frame) {
    return width / fieldAt(frame).width();
  }
}
