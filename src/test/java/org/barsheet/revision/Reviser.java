package org.barsheet.revision;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.barsheet.revision.Piece.PieceBar;

/** A composer who sends another version: what is done to each bar is known. */
final class Reviser {

  private static final int MOST_DONE = 3;

  private final SplittableRandom random;
  private final int parts;
  private List<PieceBar> bars;
  private int nextId = 100_000;

  private Reviser(Piece piece, SplittableRandom random) {
    this.random = random;
    this.parts = piece.parts();
    this.bars = new ArrayList<>(piece.bars());
  }

  /** A version in which one to three things were done to a piece. */
  static Piece revised(Piece piece, SplittableRandom random) {
    Reviser reviser = new Reviser(piece, random);
    for (int done = random.nextInt(1, MOST_DONE + 1); done > 0; done--) {
      reviser.once();
    }
    return new Piece(reviser.bars, piece.parts());
  }

  private void once() {
    int from = random.nextInt(bars.size());
    int to = Math.min(bars.size(), from + random.nextInt(1, 9));
    switch (random.nextInt(10)) {
      case 0 -> bars.addAll(from, invented(random.nextInt(1, 9)));
      case 1 -> delete(from, Math.min(to, from + 4));
      case 2 -> bars.addAll(to, bars.subList(from, to).stream().map(this::copy).toList());
      case 3 -> move(from, to);
      case 4 -> transpose(from, to, random.nextBoolean() ? 2 : -random.nextInt(1, 8));
      case 5 -> eachOf(from, to, this::otherMeter);
      case 6 -> eachOf(from, to, this::swapParts);
      case 7 -> eachOf(from, to, this::doubled);
      case 8 -> vary(from);
      default -> addOrRemoveReturn(from);
    }
  }

  private List<PieceBar> invented(int count) {
    List<PieceBar> invented = Piece.section(random, parts, count, nextId);
    nextId += count;
    return invented;
  }

  private void delete(int from, int to) {
    if (bars.size() > 8) {
      bars.subList(from, to).clear();
    }
  }

  private PieceBar copy(PieceBar bar) {
    int id = nextId++;
    int returned = bar.returnId() == 0 ? 0 : id;
    return new PieceBar(id, bar.copyOf(), bar.quarters(), bar.notes(), returned);
  }

  private void move(int from, int to) {
    List<PieceBar> moved = List.copyOf(bars.subList(from, to));
    bars.subList(from, to).clear();
    bars.addAll(random.nextInt(bars.size() + 1), moved);
  }

  private void eachOf(int from, int to, UnaryOperator<PieceBar> change) {
    for (int i = from; i < to; i++) {
      bars.set(i, change.apply(bars.get(i)));
    }
  }

  private void transpose(int from, int to, int by) {
    eachOf(
        from,
        to,
        bar ->
            bar.with(
                bar.notes().stream()
                    .map(
                        part ->
                            part.stream().map(n -> new BarNote(n.at(), n.pitch() + by)).toList())
                    .toList()));
  }

  /** The last beat goes, or a beat of rest is added. */
  private PieceBar otherMeter(PieceBar bar) {
    int quarters = bar.quarters() == 4 ? 3 : 4;
    List<List<BarNote>> left =
        bar.notes().stream()
            .map(
                part ->
                    part.stream().filter(n -> n.at() < (long) quarters * ScoreNotes.UNITS).toList())
            .toList();
    return new PieceBar(bar.id(), bar.copyOf(), quarters, left, bar.returnId());
  }

  /** Every part plays what another one played. */
  private PieceBar swapParts(PieceBar bar) {
    List<List<BarNote>> turned = new ArrayList<>(bar.notes());
    Collections.rotate(turned, 1);
    return bar.with(turned);
  }

  /** The first part is doubled an octave lower by one that rested. */
  private PieceBar doubled(PieceBar bar) {
    List<List<BarNote>> notes = new ArrayList<>(bar.notes());
    int resting =
        IntStream.range(0, parts).filter(p -> notes.get(p).isEmpty()).findFirst().orElse(0);
    if (resting > 0) {
      notes.set(
          resting, notes.get(0).stream().map(n -> new BarNote(n.at(), n.pitch() - 12)).toList());
    }
    return bar.with(notes);
  }

  /** A note or two of the melody are others. */
  private void vary(int at) {
    PieceBar bar = bars.get(at);
    List<BarNote> melody = new ArrayList<>(bar.notes().get(0));
    if (melody.size() > 2) {
      int note = random.nextInt(melody.size());
      melody.set(note, new BarNote(melody.get(note).at(), melody.get(note).pitch() + 1));
      List<List<BarNote>> notes = new ArrayList<>(bar.notes());
      notes.set(0, List.copyOf(melody));
      bars.set(at, bar.with(notes));
    }
  }

  private void addOrRemoveReturn(int at) {
    PieceBar bar = bars.get(at);
    List<List<BarNote>> notes = new ArrayList<>(bar.notes());
    boolean there = bar.returnId() > 0;
    notes.set(0, there ? List.of() : Piece.melody(random, bar.quarters()));
    bars.set(at, new PieceBar(bar.id(), bar.copyOf(), bar.quarters(), notes, there ? 0 : nextId++));
  }
}
