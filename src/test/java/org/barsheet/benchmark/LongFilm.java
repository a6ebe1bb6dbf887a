package org.barsheet.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.barsheet.score.MidiBytes;

/**
 * A film of so many panels, 4.8 seconds of music for each: a score of our own whose first part
 * plays the named figure every other bar, and a plan that asks for places in one of several ways.
 * The same panels and mixture always give the same files.
 */
final class LongFilm {

  /** How the panels ask for their places. */
  enum Mixture {
    /** Nothing is asked. */
    FREE,
    /** Every panel names its bar. */
    ALL_PINNED,
    /** Every tenth panel names its bar. */
    EVERY_TENTH_PINNED,
    /** Every other panel sits on any return of the figure. */
    ANY_RETURN,
    /** The same, and those panels have reveals. */
    ANY_RETURN_WITH_REVEALS,
    /** Every panel sits on the return nearest to a bar. */
    NEAR_BAR,
    /** Every fifth panel sits on a mark. */
    MARKS,
    /** Every panel asks for a length. */
    LENGTHS,
    /** All of the above, drawn at random. */
    ALL_KINDS
  }

  private static final int TICKS_PER_QUARTER = 480;
  private static final int BAR = 4 * TICKS_PER_QUARTER;
  private static final int EIGHTH = TICKS_PER_QUARTER / 2;
  private static final int BARS_A_SECTION = 12;
  private static final int[] FIGURE = {72, 76, 74, 79, 77, 84};
  private static final int[] TEMPI = {112, 120, 128};
  private static final int FLAPS = 24;

  private final int panels;
  private final Mixture mixture;
  private final Random random;
  private final int bars;
  private int reveals;

  private LongFilm(int panels, Mixture mixture) {
    this.panels = panels;
    this.mixture = mixture;
    this.random = new Random(panels);
    this.bars = panels * 12 / 5;
  }

  /** Writes score and plan into a folder and gives the plan. */
  static Path into(Path folder, int panels, Mixture mixture) throws IOException {
    String name = mixture.name().toLowerCase(Locale.ROOT) + "-" + panels;
    LongFilm film = new LongFilm(panels, mixture);
    Files.write(folder.resolve(name + ".mid"), film.score());
    return Files.writeString(folder.resolve(name + ".yaml"), film.plan(name));
  }

  private byte[] score() {
    return MidiBytes.file().track(conductor()).track(lead()).track(low()).bytes();
  }

  private MidiBytes.Track conductor() {
    MidiBytes.Track track = new MidiBytes.Track().meter(0, 4, 2);
    for (int section = 0; section * BARS_A_SECTION < bars; section++) {
      long tick = (long) section * BARS_A_SECTION * BAR;
      track.text(tick, 0x06, "M" + section);
      track.tempo(tick, 60_000_000 / TEMPI[section % TEMPI.length]);
    }
    return track;
  }

  private MidiBytes.Track lead() {
    MidiBytes.Track track = new MidiBytes.Track().text(0, 0x03, "Celesta");
    for (int bar = 0; bar < bars; bar++) {
      for (int i = 0; i < FIGURE.length; i++) {
        long on = (long) bar * BAR + (long) i * EIGHTH;
        int pitch = bar % 2 == 0 ? FIGURE[i] : 60 + random.nextInt(8);
        track.note(on, on + EIGHTH, 0, pitch);
      }
    }
    return track;
  }

  private MidiBytes.Track low() {
    MidiBytes.Track track = new MidiBytes.Track().text(0, 0x03, "Cello");
    for (int beat = 0; beat < 4 * bars; beat++) {
      long on = (long) beat * TICKS_PER_QUARTER;
      track.note(on, on + TICKS_PER_QUARTER, 1, 36 + random.nextInt(12));
    }
    return track;
  }

  private String plan(String name) {
    StringBuilder plan = new StringBuilder(80 * panels);
    plan.append("title: A long night\nscore: ").append(name).append(".mid\n");
    plan.append("film: {frame-rate: 24}\nmotifs:\n");
    plan.append("  figure: {notes: \"C5/8 E5/8 D5/8 G5/8 F5/8 C6/8\"}\n");
    plan.append("artwork: {square: 1 in, squares: 24x13.5}\nopenings:\n");
    for (int flap = 0; flap < FLAPS; flap++) {
      plan.append(
          "  flap-%d: {left: %d, top: 2, width: 0.8, height: 2, hinge: left, to: 90 deg}%n"
              .formatted(flap, flap));
    }
    plan.append("panels:\n");
    for (int panel = 0; panel < panels; panel++) {
      plan.append("  - {panel: ").append(panel + 1).append(", action: Panel ").append(panel + 1);
      plan.append(panel == 0 ? "" : asked(mixture, panel)).append("}\n");
    }
    return plan.toString();
  }

  private String asked(Mixture way, int panel) {
    int bar = 1 + panel * 12 / 5;
    return switch (way) {
      case FREE -> "";
      case ALL_PINNED -> ", cue: bar " + bar;
      case EVERY_TENTH_PINNED -> panel % 10 == 0 ? ", cue: bar " + bar : "";
      case ANY_RETURN -> panel % 2 == 1 ? ", cue: figure" : "";
      case ANY_RETURN_WITH_REVEALS -> panel % 2 == 1 ? ", cue: figure" + reveal() : "";
      case NEAR_BAR -> ", cue: figure near bar " + bar;
      case MARKS -> panel % 5 == 0 ? ", cue: mark M" + panel / 5 : "";
      case LENGTHS -> ", length: " + (1 + random.nextInt(3)) + " bars";
      case ALL_KINDS -> panel % 20 == 0 ? ", cue: bar " + bar : anyKind();
    };
  }

  private String anyKind() {
    String length = random.nextInt(4) == 0 ? ", length: 1..4 bars" : "";
    return switch (random.nextInt(5)) {
      case 0 -> ", cue: figure" + length;
      case 1 -> ", cue: figure" + reveal();
      case 2 -> ", length: " + (1 + random.nextInt(4)) + " s";
      default -> length;
    };
  }

  /** Flaps take turns, and each opens and closes in turn. */
  private String reveal() {
    String moves = reveals / FLAPS % 2 == 0 ? "opens" : "closes";
    return ", reveals: [{opening: flap-%d, moves: %s, photographs: 12, shown: on twos}]"
        .formatted(reveals++ % FLAPS, moves);
  }
}
