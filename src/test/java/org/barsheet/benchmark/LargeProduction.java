package org.barsheet.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.barsheet.score.MidiBytes;

/**
 * A score of 200,000 notes in 40 parts over 600 bars, twenty minutes at 120 to the minute, and a
 * plan of 30 panels, 29 with a reveal. Every 20 bars one part plays the figure the plan names.
 */
final class LargeProduction {

  static final int NOTES = 200_000;
  static final int PANELS = 30;
  private static final int BARS = 600;
  private static final int PARTS = 40;
  private static final int TICKS_PER_QUARTER = 480;
  private static final int BAR_TICKS = 4 * TICKS_PER_QUARTER;
  private static final int SIXTEENTH = TICKS_PER_QUARTER / 4;
  private static final int PERCUSSION_CHANNEL = 9;

  private LargeProduction() {}

  /** Writes score and plan into a folder and gives the plan. */
  static Path into(Path folder) throws IOException {
    Files.write(folder.resolve("large.mid"), score(0));
    return Files.writeString(folder.resolve("large.yaml"), plan());
  }

  /** Writes a version of the score whose first four bars are gone. */
  static Path revisedInto(Path folder) throws IOException {
    return Files.write(folder.resolve("large-revised.mid"), score(4));
  }

  private static byte[] score(int gone) {
    Random random = new Random(600);
    MidiBytes file = MidiBytes.file();
    for (int part = 0; part < PARTS; part++) {
      file.track(part(part, random, gone));
    }
    return file.bytes();
  }

  private static MidiBytes.Track part(int part, Random random, int gone) {
    MidiBytes.Track track = new MidiBytes.Track();
    track.text(0, 0x03, "Desk " + (part + 1));
    int channel = part % 16 == PERCUSSION_CHANNEL ? 0 : part % 16;
    int notes = NOTES / PARTS;
    for (int bar = 0; bar < BARS; bar++) {
      int inBar = notes * (bar + 1) / BARS - notes * bar / BARS;
      MidiBytes.Track own = bar < gone ? new MidiBytes.Track() : track;
      long start = (long) Math.max(0, bar - gone) * BAR_TICKS;
      if (part == 0 && bar % 20 == 0) {
        figure(own, start, channel, inBar);
      } else {
        filling(own, start, channel, inBar, random);
      }
    }
    return track;
  }

  private static void filling(
      MidiBytes.Track track, long tick, int channel, int notes, Random random) {
    for (int slot = 0; slot < notes; slot++) {
      long on = tick + (long) slot * 16 / notes * SIXTEENTH;
      track.note(on, on + SIXTEENTH, channel, 40 + random.nextInt(40));
    }
  }

  /** The named figure, and as many short notes after it as the bar still needs. */
  private static void figure(MidiBytes.Track track, long tick, int channel, int notes) {
    int[] pitches = {72, 76, 74, 79, 77, 84};
    for (int i = 0; i < pitches.length; i++) {
      long on = tick + (long) i * SIXTEENTH;
      track.note(on, on + SIXTEENTH, channel, pitches[i]);
    }
    for (int i = pitches.length; i < notes; i++) {
      long on = tick + (long) i * SIXTEENTH;
      track.note(on, on + SIXTEENTH, channel, 60);
    }
  }

  private static String plan() {
    StringBuilder plan = new StringBuilder(4096);
    plan.append(
        """
        title: Twenty minutes
        score: large.mid
        film: {frame-rate: 24}
        motifs:
          figure: {notes: "C5/16 E5/16 D5/16 G5/16 F5/16 C6/16"}
        artwork: {square: 1 in, squares: 30x12}
        openings:
        """);
    for (int panel = 1; panel <= PANELS; panel++) {
      plan.append(
          "  flap-%d: {left: %d, top: 2, width: 0.8, height: 2, hinge: left, to: 90 deg}%n"
              .formatted(panel, panel - 1));
    }
    plan.append("panels:\n  - {panel: 1, action: Nothing moves yet}\n");
    for (int panel = 2; panel <= PANELS; panel++) {
      plan.append(
          ("  - {panel: %d, action: Flap %d, cue: figure,"
                  + " reveals: [{opening: flap-%d, photographs: 24, shown: on twos}]}%n")
              .formatted(panel, panel, panel));
    }
    return plan.toString();
  }
}
