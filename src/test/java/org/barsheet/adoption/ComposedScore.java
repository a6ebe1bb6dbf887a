package org.barsheet.adoption;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/**
 * Invented music in bars of four quarters that know who they are, and what a composer does to it.
 *
 * @param bars in order
 */
record ComposedScore(List<ComposedBar> bars) {

  /** Eighths from the bar's start, and keys: the motif of the plan. */
  static final int[][] MOTIF = {{0, 72}, {2, 76}, {3, 74}, {4, 79}, {6, 71}};

  static final int PARTS = 3;
  private static final int FIRST_NEW = 1000;
  private static final int TICKS = 480;

  ComposedScore {
    bars = List.copyOf(bars);
  }

  /**
   * A bar.
   *
   * @param id who it is, in every version
   * @param copyOf the bar it repeats note for note, or its own id
   * @param notes of each part: eighths from the bar's start, and keys
   * @param mark what stands over it, or ""
   */
  record ComposedBar(int id, int copyOf, List<List<int[]>> notes, String mark) {
    ComposedBar transposed(int by) {
      List<List<int[]>> moved =
          notes.stream()
              .map(part -> part.stream().map(n -> new int[] {n[0], n[1] + by}).toList())
              .toList();
      return new ComposedBar(id, copyOf, moved, mark);
    }

    ComposedBar as(int otherId) {
      return new ComposedBar(otherId, id, notes, "");
    }
  }

  static ComposedScore invented(Random random) {
    List<ComposedBar> bars = new ArrayList<>();
    int count = 24 + random.nextInt(30);
    for (int i = 0; i < count; i++) {
      boolean repeats = i > 4 && random.nextInt(15) == 0;
      String mark = random.nextInt(8) == 0 ? "M" + i : "";
      bars.add(repeats ? bars.get(i - 3).as(i) : bar(random, i, mark));
    }
    return new ComposedScore(bars);
  }

  private static ComposedBar bar(Random random, int id, String mark) {
    List<List<int[]>> parts = new ArrayList<>();
    int motif = random.nextInt(4) == 0 ? random.nextInt(PARTS) : -1;
    for (int part = 0; part < PARTS; part++) {
      List<int[]> notes = new ArrayList<>();
      if (part == motif) {
        int by = random.nextInt(3) == 0 ? -5 : 0;
        for (int[] note : MOTIF) {
          notes.add(new int[] {note[0], note[1] + by});
        }
      } else {
        for (int eighth = 0; eighth < 8; eighth += 1 + random.nextInt(3)) {
          notes.add(new int[] {eighth, 40 + 12 * part + random.nextInt(9)});
        }
      }
      parts.add(notes);
    }
    return new ComposedBar(id, id, parts, mark);
  }

  /** Another version of it, in which one to three things were done. */
  ComposedScore revised(Random random) {
    List<ComposedBar> revised = new ArrayList<>(bars);
    int fresh = FIRST_NEW;
    for (int done = 1 + random.nextInt(3); done > 0; done--) {
      int from = random.nextInt(revised.size());
      int to = Math.min(revised.size(), from + 1 + random.nextInt(5));
      switch (random.nextInt(6)) {
        case 0 -> {
          for (int i = from; i < to; i++) {
            revised.add(from, bar(random, fresh++, ""));
          }
        }
        case 1 -> {
          if (revised.size() > 16) {
            revised.subList(from, to).clear();
          }
        }
        case 2 -> {
          List<ComposedBar> moved = List.copyOf(revised.subList(from, to));
          revised.subList(from, to).clear();
          revised.addAll(random.nextInt(revised.size() + 1), moved);
        }
        case 3 -> {
          int by = random.nextInt(9) - 4;
          revised.subList(from, to).replaceAll(bar -> bar.transposed(by));
        }
        case 4 -> {
          int first = fresh;
          revised.addAll(
              to,
              List.copyOf(revised.subList(from, to)).stream()
                  .map(b -> b.as(first + b.id()))
                  .toList());
          fresh += 10_000;
        }
        default -> {
          List<List<int[]>> notes = new ArrayList<>(revised.get(from).notes());
          notes.set(random.nextInt(PARTS), List.of(MOTIF));
          ComposedBar bar = revised.get(from);
          revised.set(from, new ComposedBar(bar.id(), bar.copyOf(), notes, bar.mark()));
        }
      }
    }
    return new ComposedScore(revised);
  }

  /**
   * The same with a copy in the place of the bar it repeats where it stands among that bar's
   * neighbors and the bar itself does not: to a listener the copy is that bar.
   */
  ComposedScore asHeard() {
    List<ComposedBar> heard = new ArrayList<>(bars);
    for (int i = 0; i < bars.size(); i++) {
      int copied = origin(bars.get(i));
      int copy = i;
      boolean better =
          IntStream.range(0, bars.size())
              .filter(
                  k -> bars.get(k).id() == copied || (k != copy && origin(bars.get(k)) == copied))
              .allMatch(k -> neighbors(k, copied) < neighbors(copy, copied));
      if (bars.get(i).id() != copied && better) {
        ComposedBar bar = bars.get(i);
        heard.replaceAll(
            one -> one.id() == copied ? new ComposedBar(-1, -1, one.notes(), "") : one);
        heard.set(i, new ComposedBar(copied, copied, bar.notes(), bar.mark()));
      }
    }
    return new ComposedScore(heard);
  }

  /** The bar of the first version that a bar repeats, directly or by other copies. */
  private int origin(ComposedBar bar) {
    if (bar.id() < FIRST_NEW || bar.copyOf() == bar.id()) {
      return bar.id();
    }
    int first = bar.copyOf();
    return bars.stream()
        .filter(one -> one.id() == first)
        .findFirst()
        .map(this::origin)
        .orElse(first);
  }

  /** How many of the two bars around a bar are those around the bar of the first version. */
  private int neighbors(int index, int id) {
    int before = index > 0 ? origin(bars.get(index - 1)) : -1;
    int after = index + 1 < bars.size() ? origin(bars.get(index + 1)) : -1;
    return (before == id - 1 ? 1 : 0) + (after == id + 1 ? 1 : 0);
  }

  void write(Path file) throws IOException {
    try {
      Sequence sequence = new Sequence(Sequence.PPQ, TICKS);
      Track first = sequence.createTrack();
      for (int bar = 0; bar < bars.size(); bar++) {
        if (!bars.get(bar).mark().isEmpty()) {
          first.add(new MidiEvent(text(6, bars.get(bar).mark()), at(bar, 0)));
        }
      }
      for (int part = 0; part < PARTS; part++) {
        Track track = sequence.createTrack();
        track.add(new MidiEvent(text(3, "Part " + "ABC".charAt(part)), 0));
        for (int bar = 0; bar < bars.size(); bar++) {
          for (int[] note : bars.get(bar).notes().get(part)) {
            long on = at(bar, note[0]);
            track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_ON, part, note[1], 90), on));
            track.add(
                new MidiEvent(
                    new ShortMessage(ShortMessage.NOTE_OFF, part, note[1], 0),
                    on + TICKS / 2 - 10));
          }
        }
      }
      MidiSystem.write(sequence, 1, file.toFile());
    } catch (InvalidMidiDataException impossible) {
      throw new AssertionError(impossible);
    }
  }

  private static MetaMessage text(int type, String text) throws InvalidMidiDataException {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    return new MetaMessage(type, bytes, bytes.length);
  }

  private static long at(int bar, int eighth) {
    return (long) TICKS * 4 * bar + (long) TICKS / 2 * eighth;
  }
}
