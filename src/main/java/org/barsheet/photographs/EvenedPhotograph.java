package org.barsheet.photographs;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.pixels.CameraMove;
import org.barsheet.pixels.ColorImage;
import org.barsheet.pixels.Evening;
import org.barsheet.pixels.LightChange;
import org.barsheet.pixels.SmallJpeg;

/** A copy of a photograph with shift and light put right; the photograph itself stays. */
public final class EvenedPhotograph {

  /** Less than this nobody sees, and interpolating costs sharpness. */
  private static final double LEAST_PIXELS = 0.05;

  private static final double LEAST_STOPS = 0.002;
  private static final float QUALITY = 0.95f;

  private final CheckedPhotograph photograph;
  private final CameraMove move;
  private final LightChange light;

  public EvenedPhotograph(CheckedPhotograph photograph, int width, int height) {
    this.photograph = photograph;
    CameraMove measured = photograph.move();
    boolean moved = measured.shift() + measured.atCorner(width, height) > LEAST_PIXELS;
    this.move = moved ? measured : CameraMove.NONE;
    LightChange change = photograph.light();
    boolean changed =
        Math.abs(change.stops()) + Math.abs(change.redder()) + Math.abs(change.bluer())
            > LEAST_STOPS;
    this.light = changed ? change : LightChange.NONE;
  }

  /** {@code evened/small-lamp 014.jpg}, within the folder of the photographs. */
  public String fileName() {
    return "evened/" + photograph.planned().fileName() + ".jpg";
  }

  /** What is done to it, in a sentence. */
  public String done() {
    List<String> done = new ArrayList<>();
    if (move.isKnown()) {
      int every = PhotographReader.every(photograph.taken().facts());
      done.add("moved back from " + CameraFaults.words(move, every));
    }
    if (light.isKnown()) {
      done.add(
          String.format(
              Locale.ROOT,
              "%.3f stops %s, red %+.3f, blue %+.3f",
              Math.abs(light.stops()),
              light.stops() > 0 ? "darker" : "brighter",
              -light.redder(),
              -light.bluer()));
    }
    return photograph.planned().name()
        + ": "
        + (done.isEmpty() ? "nothing to even" : String.join("; ", done));
  }

  /**
   * Writes it as a JPEG.
   *
   * @throws IOException if the photograph went away, or the stream does not take it
   */
  public void writeTo(OutputStream out) throws IOException {
    try {
      ColorImage image =
          PhotographReader.decode(photograph.taken().file(), photograph.taken().facts());
      SmallJpeg.write(Evening.evened(image, move, light), QUALITY, out);
    } catch (UnreadablePhotographException gone) {
      throw new IOException(gone);
    }
  }
}
