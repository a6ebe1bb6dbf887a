package org.barsheet.exposure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.artwork.FrameRect;
import org.barsheet.artwork.Framing;
import org.barsheet.timing.TimingSheet;

/**
 * A performer's clip on one film frame.
 *
 * @param frame film frame
 * @param rect where its opening lies in the frame
 * @param clipFrame frame of the clip, from 0; empty where rate or clap are not known
 */
public record Insert(long frame, FrameRect rect, OptionalLong clipFrame) {

  /**
   * An appearance frame by frame; nothing where its panel does not say what the camera sees.
   *
   * @param timing the film it belongs to
   */
  public static List<Insert> of(TimingSheet timing, Appearance appearance) {
    Optional<Framing> framing = Framing.of(timing, timing.shots().get(appearance.shot()));
    List<Insert> inserts = new ArrayList<>();
    if (framing.isPresent()) {
      for (long f = appearance.frames().start(); f < appearance.frames().endExclusive(); f++) {
        inserts.add(
            new Insert(
                f,
                framing.get().inFrame(appearance.opening().rect(), f),
                appearance.clipFrameAt(timing.clock(), f)));
      }
    }
    return List.copyOf(inserts);
  }
}
