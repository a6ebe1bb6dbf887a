package org.barsheet.score;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.barsheet.score.ScoreEvents.SoundingNote;

/**
 * Joins the note-ons of one track to their note-offs: first on, first off. At one tick a note-off
 * ends what sounded before; what is left of them ends notes that begin there. Pairs that the
 * standard leaves open are decided this way because re-struck notes are far commoner than nested
 * ones. Where a key lacks note-offs, that would give every later note the end of the one before it:
 * there a note ends with the next note-off or when its key is struck again, whichever comes first.
 */
final class NotePairer {

  private static final int KEYS = 128;

  private final int track;
  private final ScoreEvents events;
  private final TreeMap<Integer, Key> keys = new TreeMap<>();
  private final List<Integer> offsWithoutNote = new ArrayList<>();
  private final List<Begun> beginning = new ArrayList<>();
  private long now;

  private record Begun(int channel, int pitch, int velocity, long tick, long offset) {
    int key() {
      return channel * KEYS + pitch;
    }
  }

  /** All of one key of one channel, in order of time; the ends are at most as many. */
  private static final class Key {
    private final List<Begun> begun = new ArrayList<>();
    private final List<Long> ends = new ArrayList<>();

    boolean sounds() {
      return ends.size() < begun.size();
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
    for (Key key : keys.values()) {
      if (key.sounds()) {
        endOrStrikeAgain(key, tick);
      } else {
        for (int i = 0; i < key.begun.size(); i++) {
          add(key.begun.get(i), key.ends.get(i));
        }
      }
    }
    keys.clear();
  }

  private void moveTo(long tick) {
    if (tick == now) {
      return;
    }
    for (Begun note : beginning) {
      keys.computeIfAbsent(note.key(), key -> new Key()).begun.add(note);
    }
    beginning.clear();
    for (int key : offsWithoutNote) {
      endOldest(key, now);
    }
    offsWithoutNote.clear();
    now = tick;
  }

  private boolean endOldest(int number, long tick) {
    Key key = keys.get(number);
    if (key == null || !key.sounds()) {
      return false;
    }
    key.ends.add(tick);
    return true;
  }

  private void endOrStrikeAgain(Key key, long trackEnd) {
    int end = 0;
    for (int i = 0; i < key.begun.size(); i++) {
      Begun note = key.begun.get(i);
      boolean last = i + 1 == key.begun.size();
      long struckAgain = last ? trackEnd : key.begun.get(i + 1).tick();
      while (end < key.ends.size() && key.ends.get(end) < note.tick()) {
        end++;
      }
      if (end < key.ends.size() && (last || key.ends.get(end) <= struckAgain)) {
        add(note, key.ends.get(end++));
      } else {
        events.noteHanging(note.offset());
        add(note, struckAgain);
      }
    }
  }

  private void add(Begun note, long endTick) {
    events.addNote(
        new SoundingNote(
            track, note.channel(), note.pitch(), note.velocity(), note.tick(), endTick));
  }
}
