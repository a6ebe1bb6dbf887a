package org.barsheet.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * A piece of invented music as a list of bars that know who they are: a revision of it knows what
 * became of each.
 *
 * @param bars in order
 * @param parts how many parts play
 */
record Piece(List<PieceBar> bars, int parts) {

  private static final int[] SCALE = {0, 2, 4, 5, 7, 9, 11};
  private static final int QUARTER = ScoreNotes.UNITS;

  Piece {
    bars = List.copyOf(bars);
  }

  /**
   * A bar.
   *
   * @param id who it is, in every version
   * @param copyOf the bar it repeats note for note, or its own id
   * @param quarters its length
   * @param notes of each part
   * @param returnId which return of the melody begins in it, or 0
   */
  record PieceBar(int id, int copyOf, int quarters, List<List<BarNote>> notes, int returnId) {
    PieceBar {
      notes = List.copyOf(notes);
    }

    PieceBar with(List<List<BarNote>> others) {
      return new PieceBar(id, copyOf, quarters, others, returnId);
    }
  }

  /** Invents a piece of 24 to 120 bars; some pieces repeat whole sections. */
  static Piece invented(SplittableRandom random) {
    int parts = random.nextInt(2, 9);
    List<PieceBar> bars = new ArrayList<>();
    int sections = random.nextInt(3, 8);
    for (int section = 0; section < sections; section++) {
      if (section > 0 && random.nextInt(4) == 0) {
        int from = random.nextInt(bars.size() / 2 + 1);
        int to = Math.min(bars.size(), from + random.nextInt(2, 9));
        for (PieceBar bar : List.copyOf(bars.subList(from, to))) {
          int returned = bar.returnId() == 0 ? 0 : 10_000 + bars.size();
          bars.add(new PieceBar(bars.size() + 1, bar.id(), bar.quarters(), bar.notes(), returned));
        }
      } else {
        bars.addAll(section(random, parts, random.nextInt(8, 17), bars.size() + 1));
      }
    }
    return new Piece(bars, parts);
  }

  /** Bars of a melody over figures; now and then a bar rests, and the melody returns. */
  static List<PieceBar> section(SplittableRandom random, int parts, int count, int firstId) {
    List<PieceBar> bars = new ArrayList<>();
    int quarters = random.nextInt(4) == 0 ? 3 : 4;
    for (int bar = 0; bar < count; bar++) {
      int chord = random.nextInt(4);
      List<List<BarNote>> notes = new ArrayList<>();
      boolean silent = random.nextInt(25) == 0;
      for (int part = 0; part < parts; part++) {
        boolean rests = silent || random.nextInt(4) == 0;
        notes.add(
            rests
                ? List.of()
                : part == 0 ? melody(random, quarters) : figure(part, chord, quarters));
      }
      int id = firstId + bar;
      boolean returns = !notes.get(0).isEmpty() && random.nextInt(6) == 0;
      bars.add(new PieceBar(id, id, quarters, notes, returns ? id : 0));
    }
    return bars;
  }

  static List<BarNote> melody(SplittableRandom random, int quarters) {
    List<BarNote> notes = new ArrayList<>();
    int step = 40 + random.nextInt(-4, 5);
    for (int at = 0; at < 2 * quarters; ) {
      step += random.nextInt(-3, 4);
      notes.add(new BarNote((long) at * QUARTER / 2, pitch(step)));
      at += 1 + random.nextInt(3);
    }
    return notes;
  }

  private static List<BarNote> figure(int part, int chord, int quarters) {
    List<BarNote> notes = new ArrayList<>();
    for (int beat = 0; beat < quarters; beat++) {
      if (part % 3 != 2 || beat == 0) {
        int step = 36 - 3 * part + 2 * chord + (part % 2 == 0 ? 0 : 2 * (beat % 2));
        notes.add(new BarNote((long) beat * QUARTER, pitch(step)));
      }
    }
    return notes;
  }

  private static int pitch(int step) {
    return Math.floorMod(SCALE[Math.floorMod(step, 7)] + 12 * Math.floorDiv(step, 7), 120);
  }

  /** The piece as it is kept. */
  ScoreNotes notes() {
    List<HeldBar> held = new ArrayList<>();
    long start = 0;
    for (PieceBar bar : bars) {
      List<Long> beats = new ArrayList<>();
      for (int beat = 0; beat < bar.quarters(); beat++) {
        beats.add(start + (long) beat * QUARTER);
      }
      start += (long) bar.quarters() * QUARTER;
      held.add(new HeldBar(held.size() + 1, 1, beats, start));
    }
    List<HeldPart> heldParts = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      int index = part;
      heldParts.add(
          new HeldPart(
              "part " + part, false, bars.stream().map(bar -> bar.notes().get(index)).toList()));
    }
    return new ScoreNotes(held, heldParts);
  }

  /**
   * Its returns in order, numbered as they come; each is played by the part that has the melody.
   */
  List<HeldReturn> returns() {
    List<HeldReturn> returns = new ArrayList<>();
    long start = 0;
    for (PieceBar bar : bars) {
      if (bar.returnId() > 0) {
        returns.add(
            new HeldReturn("glimmer", returns.size() + 1, List.of("part 0"), moved(bar, start)));
      }
      start += (long) bar.quarters() * QUARTER;
    }
    return returns;
  }

  private static List<BarNote> moved(PieceBar bar, long start) {
    return bar.notes().stream()
        .filter(notes -> !notes.isEmpty())
        .findFirst()
        .orElse(List.of())
        .stream()
        .map(note -> new BarNote(note.at() + start, note.pitch()))
        .toList();
  }

  /** Who returns, in order. */
  List<Integer> returnIds() {
    return bars.stream().map(PieceBar::returnId).filter(id -> id > 0).toList();
  }
}
