package org.barsheet.handoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.timing.Kept;

/**
 * What an earlier run laid down, read back from its {@code timing.json}.
 *
 * @param title of the film
 * @param rate of the film
 * @param firstFrame label of film frame 0
 * @param lengthFrames of the film
 * @param inputs the files it was made from
 * @param cues in order of time
 * @param shots in story order
 */
public record EarlierTiming(
    String title,
    FrameRate rate,
    Timecode firstFrame,
    long lengthFrames,
    List<EarlierInput> inputs,
    List<EarlierCue> cues,
    List<EarlierShot> shots) {

  public EarlierTiming {
    inputs = List.copyOf(inputs);
    cues = List.copyOf(cues);
    shots = List.copyOf(shots);
  }

  /** What a later run may not move: the frames of every shot and of every reveal. */
  public Kept kept() {
    Map<String, FrameSpan> frames = new LinkedHashMap<>();
    List<Kept.Run> runs = new ArrayList<>();
    for (EarlierShot shot : shots) {
      frames.putIfAbsent(shot.panel(), shot.frames());
      for (EarlierReveal reveal : shot.reveals()) {
        runs.add(
            new Kept.Run(
                shot.panel(), reveal.opening(), reveal.firstGapFrame(), reveal.landsFrame()));
      }
    }
    return new Kept(frames, runs);
  }

  /**
   * A file the earlier run read.
   *
   * @param file name without folders
   * @param sha256 64 lower-case hexadecimal digits
   */
  public record EarlierInput(String file, String sha256) {}

  /**
   * A cue of the earlier run.
   *
   * @param id permanent name within the film
   * @param kind {@code occurrence}, {@code mark} …
   * @param name motif or mark it is of, or ""
   * @param number which return of the motif, from 1; else 0
   * @param bar printed bar number
   * @param at exact time from tick 0 of the score
   * @param frame film frame
   */
  public record EarlierCue(
      String id, String kind, String name, int number, int bar, Seconds at, long frame) {}

  /**
   * A shot of the earlier run.
   *
   * @param panel name of its panel
   * @param cue id of the cue it sat on
   * @param frames its film frames
   * @param reveals in order of layer
   */
  public record EarlierShot(
      String panel, String cue, FrameSpan frames, List<EarlierReveal> reveals) {
    public EarlierShot {
      reveals = List.copyOf(reveals);
    }
  }

  /**
   * A reveal of the earlier run.
   *
   * @param opening what moved
   * @param model what was under the camera
   * @param layer from 1
   * @param accentFrame frame of the sounding accent
   * @param landsFrame frame of the landing picture
   * @param firstGapFrame frame of the first moved picture
   * @param exposures from the shot's first frame to its last
   */
  public record EarlierReveal(
      String opening,
      String model,
      int layer,
      long accentFrame,
      long landsFrame,
      long firstGapFrame,
      List<EarlierExposure> exposures) {
    public EarlierReveal {
      exposures = List.copyOf(exposures);
    }
  }

  /**
   * A picture shown for a run of frames.
   *
   * @param frames film frames, at least one
   * @param picture its permanent name
   * @param progress share of the movement done in it, 0 to 1
   */
  public record EarlierExposure(FrameSpan frames, String picture, BigDecimal progress) {}
}
