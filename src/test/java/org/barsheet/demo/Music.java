package org.barsheet.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.barsheet.demo.Player.Doubling;

/** The demo score while it is being written: bars, tempo, marks, notes and the planted returns. */
final class Music {

  static final String TITLE = "Lamplighters' Quay";

  private static final int DOWNBEAT_STRESS = 4;

  private final BarLines bars;
  private final List<Tempo> tempos = new ArrayList<>();
  private final List<Text> texts = new ArrayList<>();
  private final Map<Player, List<Note>> notes = new EnumMap<>(Player.class);
  private final Map<Player, List<Controller>> controllers = new EnumMap<>(Player.class);
  private final List<PlantedReturn> planted = new ArrayList<>();

  Music(BarLines bars) {
    this.bars = bars;
    for (Player player : Player.values()) {
      notes.put(player, new ArrayList<>());
      controllers.put(player, new ArrayList<>());
    }
  }

  /** One sounding note, in ticks. */
  record Note(long start, long end, int key, int velocity) {}

  /** A meter from a tick on: so many beats of one {@code unit}th of a whole note. */
  record Meter(long tick, int beats, int unit) {}

  /** A tempo from a tick on. */
  record Tempo(long tick, int microsPerQuarter) {}

  /** A text event: 0x01 a word for the players, 0x06 a rehearsal mark, 0x07 a cue point. */
  record Text(long tick, int type, String text) {
    static final int WORD = 0x01;
    static final int MARK = 0x06;
    static final int CUE_POINT = 0x07;
  }

  /** A step of a player's expression controller, 0 to 127. */
  record Controller(long tick, int value) {
    static final int EXPRESSION = 11;
    static final int FULL = 112;
  }

  /**
   * Plays a phrase from the first beat of a bar, swelling or fading from one dynamic to another.
   */
  void play(Player player, int bar, String text, Dynamic from, Dynamic to) {
    lay(player, bar, Phrase.parse(text), from, to);
  }

  void play(Player player, int bar, String text, Dynamic dynamic) {
    play(player, bar, text, dynamic, dynamic);
  }

  /** Strikes a drum wherever the rhythm has an {@code x}. */
  void strike(Drum drum, int bar, String rhythm, Dynamic from, Dynamic to) {
    play(Player.PERCUSSION, bar, rhythm.replace("x", drum.pitch), from, to);
  }

  void strike(Drum drum, int bar, String rhythm, Dynamic dynamic) {
    strike(drum, bar, rhythm, dynamic, dynamic);
  }

  /** Plays a return of a motif in one or more parts and enters it in the ledger. */
  void plant(Motif motif, Form form, int bar, String text, Dynamic dynamic, Doubling... parts) {
    Phrase phrase = Phrase.parse(text);
    for (Doubling part : parts) {
      lay(part.player(), bar, phrase.octaves(part.octaves()), dynamic, dynamic);
    }
    Phrase sounding = phrase.octaves(parts[0].octaves());
    BarLines.BarPlace place = bars.placeOf(bars.startOf(bar) + phrase.sounds().get(0).start());
    List<String> names = Arrays.stream(parts).map(part -> part.player().title).toList();
    planted.add(new PlantedReturn(motif, form, place.bar(), place.beat(), names, sounding));
  }

  private void lay(Player player, int bar, Phrase phrase, Dynamic from, Dynamic to) {
    long start = bars.startOf(bar);
    for (long line : phrase.barLines()) {
      if (!bars.isBarLine(start + line)) {
        throw new IllegalArgumentException(
            player.title + ", phrase at bar " + bar + ": no bar line " + line + " ticks into it");
      }
    }
    for (Phrase.Sound sound : phrase.sounds()) {
      long at = start + sound.start();
      double progress = phrase.length() == 0 ? 0 : (double) sound.start() / phrase.length();
      long velocity = from.velocity + Math.round(progress * (to.velocity - from.velocity));
      int stress = bars.isBarLine(at) ? DOWNBEAT_STRESS : 0;
      add(
          player,
          new Note(at, at + sound.ticks(), sound.key(), (int) Math.min(127, velocity + stress)));
    }
  }

  private void add(Player player, Note note) {
    for (Note other : written(player)) {
      if (other.key() == note.key() && other.start() < note.end() && note.start() < other.end()) {
        throw new IllegalArgumentException(
            player.title + " plays key " + note.key() + " twice at " + bars.placeOf(note.start()));
      }
    }
    written(player).add(note);
  }

  /** Swells or fades under long notes from one bar line to another, in quarter-note steps. */
  void swell(int firstBar, int endBar, int from, int to, Player... players) {
    long start = bars.startOf(firstBar);
    long ticks = bars.startOf(endBar) - start;
    for (Player player : players) {
      List<Controller> steps = controllers.computeIfAbsent(player, key -> new ArrayList<>());
      for (long tick = 0; tick < ticks; tick += ScoreFile.TICKS_PER_QUARTER) {
        steps.add(new Controller(start + tick, (int) (from + (to - from) * tick / ticks)));
      }
      steps.add(new Controller(start + ticks, Controller.FULL));
    }
  }

  /** Sets the tempo from a beat (counted from 1, in quarters) of a bar on. */
  void tempo(int bar, int beat, int beatsPerMinute) {
    long micros = Math.round(60_000_000.0 / beatsPerMinute);
    tempos.add(new Tempo(bars.startOf(bar, beat), (int) micros));
  }

  /** Sets a tempo on each beat in turn from the first beat of a bar on. */
  void tempos(int bar, int... beatsPerMinute) {
    for (int beat = 0; beat < beatsPerMinute.length; beat++) {
      tempo(bar, beat + 1, beatsPerMinute[beat]);
    }
  }

  void word(int bar, int beat, String text) {
    texts.add(new Text(bars.startOf(bar, beat), Text.WORD, text));
  }

  void mark(int bar, String text) {
    texts.add(new Text(bars.startOf(bar), Text.MARK, text));
  }

  void cuePoint(int bar, int beat, String text) {
    texts.add(new Text(bars.startOf(bar, beat), Text.CUE_POINT, text));
  }

  BarLines bars() {
    return bars;
  }

  List<Meter> meters() {
    return bars.meters();
  }

  List<Tempo> tempos() {
    return List.copyOf(tempos);
  }

  List<Text> texts() {
    return List.copyOf(texts);
  }

  List<Controller> controllers(Player player) {
    return List.copyOf(controllers.getOrDefault(player, List.of()));
  }

  /** A player's notes by start, then from the lowest. */
  List<Note> notes(Player player) {
    return written(player).stream()
        .sorted(Comparator.comparingLong(Note::start).thenComparingInt(Note::key))
        .toList();
  }

  private List<Note> written(Player player) {
    return notes.computeIfAbsent(player, key -> new ArrayList<>());
  }

  /** Every planted return, by motif, then in time order. */
  List<PlantedReturn> planted() {
    return planted.stream()
        .sorted(
            Comparator.comparing(PlantedReturn::motif)
                .thenComparing(PlantedReturn::bar)
                .thenComparing(PlantedReturn::beat))
        .toList();
  }
}
