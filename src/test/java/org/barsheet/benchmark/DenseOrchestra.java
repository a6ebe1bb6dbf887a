package org.barsheet.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.barsheet.score.MidiBytes;

/**
 * Music as thick as a symphony's finale, made up by rule: forty parts that play tremolo, ostinati,
 * arpeggios, repeated chords, lines of their own, and a theme doubled in unisons and octaves that
 * comes back every sixteen bars.
 */
final class DenseOrchestra {

  private static final int PARTS = 40;
  private static final int TICKS_PER_QUARTER = 480;
  private static final int BAR_TICKS = 4 * TICKS_PER_QUARTER;
  private static final int BARS_A_SECTION = 8;
  private static final int PERCUSSION_CHANNEL = 9;
  private static final int[] SCALE = {0, 2, 4, 5, 7, 9, 11};

  /** Scale step and sixteenths of each note of the theme, two bars long. */
  private static final int[][] THEME = {
    {0, 6}, {2, 2}, {4, 2}, {3, 2}, {5, 4}, {4, 4}, {1, 2}, {2, 2}, {6, 4}, {4, 4}
  };

  private enum Role {
    REST,
    CHORD,
    REPEATED,
    TREMOLO,
    OSTINATO,
    ARPEGGIO,
    LINE,
    THEME
  }

  private final SplittableRandom random;
  private final int jitter;
  private final List<MidiBytes.Track> tracks = new ArrayList<>();
  private final int[] octaves = new int[PARTS];
  private final int[] walked = new int[PARTS];
  private int notes;

  private DenseOrchestra(long seed, int jitter) {
    this.random = new SplittableRandom(seed);
    this.jitter = jitter;
    for (int part = 0; part < PARTS; part++) {
      MidiBytes.Track track = new MidiBytes.Track();
      tracks.add(track.text(0, 0x03, "Desk " + (part + 1)));
      octaves[part] = 6 - 4 * part / PARTS;
    }
  }

  /**
   * Writes a score of at least so many notes, up to the end of the bar that has the last of them.
   *
   * @param jitter ticks that a note may begin late, as in a score that was played in part by part
   */
  static Path into(Path folder, int notes, int jitter) throws IOException {
    DenseOrchestra orchestra = new DenseOrchestra(notes, jitter);
    orchestra.playAtLeast(notes);
    MidiBytes file = MidiBytes.file();
    orchestra.tracks.forEach(file::track);
    return Files.write(folder.resolve("dense-" + notes + "-" + jitter + ".mid"), file.bytes());
  }

  private void playAtLeast(int least) {
    Role[] roles = new Role[PARTS];
    for (int bar = 0; notes < least; bar++) {
      if (bar % BARS_A_SECTION == 0) {
        cast(roles, bar % (2 * BARS_A_SECTION) == 0);
      }
      int degree = 3 * bar % 7;
      for (int part = 0; part < PARTS; part++) {
        play(roles[part], part, bar, degree);
      }
    }
  }

  private void cast(Role[] roles, boolean withTheme) {
    Role[] all = Role.values();
    for (int part = 0; part < PARTS; part++) {
      roles[part] = all[random.nextInt(all.length - 1)];
      if (withTheme && random.nextInt(6) == 0) {
        roles[part] = Role.THEME;
      }
    }
  }

  private void play(Role role, int part, int bar, int degree) {
    switch (role) {
      case REST -> {}
      case CHORD -> evenly(part, bar, 2, new int[] {degree + 2 * (part % 3)});
      case REPEATED -> evenly(part, bar, 8, new int[] {degree + 2 * (part % 3)});
      case TREMOLO -> evenly(part, bar, 16, new int[] {degree + 2 * (part % 3)});
      case OSTINATO -> evenly(part, bar, 8, new int[] {0, 4, 2, 4, 1, 4, 2, 4});
      case ARPEGGIO -> evenly(part, bar, 8, new int[] {degree, degree + 2, degree + 4, degree + 7});
      case LINE -> evenly(part, bar, 4, walk(part));
      case THEME -> theme(part, bar, degree);
    }
  }

  private int[] walk(int part) {
    int[] steps = new int[4];
    for (int i = 0; i < steps.length; i++) {
      walked[part] = Math.max(-4, Math.min(8, walked[part] + random.nextInt(-2, 3)));
      steps[i] = walked[part];
    }
    return steps;
  }

  private void evenly(int part, int bar, int count, int[] steps) {
    for (int i = 0; i < count; i++) {
      note(part, bar, 16 * i / count, 16 / count, steps[i % steps.length]);
    }
  }

  private void theme(int part, int bar, int degree) {
    if (bar % 2 == 0) {
      int at = 0;
      for (int[] note : THEME) {
        note(part, bar, at, note[1], (bar % BARS_A_SECTION == 0 ? 0 : degree) + note[0]);
        at += note[1];
      }
    }
  }

  private void note(int part, int bar, int sixteenth, int sixteenths, int step) {
    int channel = part % 16 == PERCUSSION_CHANNEL ? 0 : part % 16;
    int pitch = 12 * (octaves[part] + Math.floorDiv(step, 7)) + SCALE[Math.floorMod(step, 7)];
    long on = (long) bar * BAR_TICKS + (long) sixteenth * TICKS_PER_QUARTER / 4;
    long off = on + (long) sixteenths * TICKS_PER_QUARTER / 4 - 2L * jitter - 1;
    long late = jitter == 0 ? 0 : random.nextInt(jitter + 1);
    tracks.get(part).note(on + late, off + late, channel, pitch);
    notes++;
  }
}
