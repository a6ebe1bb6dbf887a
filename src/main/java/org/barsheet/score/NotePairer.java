package org.barsheet.score;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import org.barsheet.score.ScoreEvents.SoundingNote;

/**
 * Joins the note-ons of one track to their note-offs: first on, first off. At one tick a note-off
 * ends what sounded before; what is left of them ends notes that begin there. Pairs that the
 * standard leaves open are decided this way because re-struck notes are far commoner than nested
 * ones.
 */
final class NotePairer {

  private static final int KEYS = 128;

  private final int track;
  private final ScoreEvents events;
  private final TreeMap<Integer, Deque<Begun>> sounding = new TreeMap<>();
  private final List<Integer> offsWithoutNote = new ArrayList<>();
  private final List<Begun> beginning = new ArrayList<>();
  private long now;

  private record Begun(int channel, int pitch, int velocity, long tick, long offset) {
    int key() {
      return channel * KEYS + pitch;
    }
  }

  NotePairer(int track, ScoreEvents events) {
    this.track = track;
    this.events = events;
  }

  /** A note begins; ticks never go back. */
  void on(int channel, int pitch, int velocity, long tick, long offset) {
    moveTo(tick);
    beginning.add(new Begun(channel, pitch, velocity, tick, offset));
  }

  /** A note ends; ticks never go back. */
  void off(int channel, int pitch, long tick) {
    moveTo(tick);
    int key = channel * KEYS + pitch;
    if (!endOldest(key, tick)) {
      offsWithoutNote.add(key);
    }
  }

  /** The track ends: what still sounds ends with it. */
  void end(long tick) {
    moveTo(Long.MAX_VALUE);
    sounding.values().stream()
        .flatMap(Deque::stream)
        .forEach(
            note -> {
              events.noteHanging(note.offset());
              add(note, tick);
            });
    sounding.clear();
  }

  private void moveTo(long tick) {
    if (tick == now) {
      return;
    }
    for (Begun note : beginning) {
      sounding.computeIfAbsent(note.key(), key -> new ArrayDeque<>()).add(note);
    }
    beginning.clear();
    for (int key : offsWithoutNote) {
      endOldest(key, now);
    }
    offsWithoutNote.clear();
    now = tick;
  }

  private boolean endOldest(int key, long tick) {
    Deque<Begun> notes = sounding.get(key);
    if (notes == null || notes.isEmpty()) {
      return false;
    }
    add(notes.remove(), tick);
    return true;
  }

  private void add(Begun note, long endTick) {
    events.addNote(
        new SoundingNote(
            track, note.channel(), note.pitch(), note.velocity(), note.tick(), endTick));
  }
}
