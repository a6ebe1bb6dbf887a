package org.barsheet.calls;

import java.util.List;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;

/**
 * What of a performer's frame is seen in an opening, and where they are in it: the words and the
 * numbers that a small drawing is made from.
 *
 * @param opening where they are seen
 * @param panels the panels they are seen in there
 * @param frameWidth of the camera's frame, in pixels
 * @param frameHeight of the camera's frame, in pixels
 * @param sizeKnown whether that is the frame they told of, not one of the usual shape
 * @param hole the part of the frame that is seen
 * @param pose how they hold their instrument
 */
public record CallFraming(
    String opening,
    List<String> panels,
    int frameWidth,
    int frameHeight,
    boolean sizeKnown,
    ClipCrop hole,
    Pose pose) {

  /** The short and the long side of a frame as phones take it (common practice, no source). */
  private static final int SHORT = 1080;

  private static final int LONG = 1920;

  /** Less than this share of the frame is not worth a word. */
  private static final double NOTHING = 0.005;

  public CallFraming {
    panels = List.copyOf(panels);
  }

  static CallFraming of(Performer performer, Opening opening, List<String> panels, Pose pose) {
    Rect rect = opening.rect();
    boolean known = performer.clipWidth() > 0 && performer.clipHeight() > 0;
    boolean upright = rect.height() > rect.width();
    int width = known ? performer.clipWidth() : upright ? SHORT : LONG;
    int height = known ? performer.clipHeight() : upright ? LONG : SHORT;
    ClipCrop hole = ClipCrop.of(width, height, rect);
    return new CallFraming(opening.name(), panels, width, height, known, hole, pose);
  }

  /** The share of the hole's height that a head takes up: less where the hole is tall. */
  public double headShare() {
    return hole.height() > hole.width() ? 1 / 4.0 : 1 / 3.0;
  }

  /** How to hold the camera, and what is cut off. */
  String words() {
    String frame = sizeKnown ? " (" + size(frameWidth, frameHeight) + ")" : "";
    return opening
        + (panels.size() == 1 ? " (panel " : " (panels ")
        + String.join(", ", panels)
        + "): hold the camera in "
        + (frameHeight > frameWidth ? "portrait" : "landscape")
        + frame
        + ". "
        + cutOff();
  }

  private String cutOff() {
    double sides = hole.left() / frameWidth;
    double ends = hole.top() / frameHeight;
    if (Math.max(sides, ends) < NOTHING) {
      return "All of your frame is seen.";
    }
    return (sides > ends ? "The left and the right " : "The top and the bottom ")
        + Math.round(100 * Math.max(sides, ends))
        + " % of your frame are cut off.";
  }

  private static String size(int width, int height) {
    return width + " × " + height;
  }
}
