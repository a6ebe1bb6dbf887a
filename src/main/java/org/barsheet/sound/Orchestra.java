package org.barsheet.sound;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.PriorityQueue;
import org.barsheet.clock.Seconds;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/**
 * Plays the score: every part in the timbre of its family, from left to right in the order of the
 * parts, in a small room. The strength of the whole is set from the most that sounds at once, and
 * what still rises above is bent, never cut.
 */
final class Orchestra implements SampleSource {

  private static final int MOST_VOICES = 96;
  private static final double WIDTH = 0.6;
  private static final double LOUDEST = 0.4;

  /** Strength at which the loudest moment stays mostly below the bend. */
  private static final double LOUDNESS = 0.4;

  private static final float ROOM = 0.22f;

  private final SoundLayout layout;
  private final TimingSheet timing;
  private final Wavetables tables = new Wavetables();
  private final DrumKit drums = new DrumKit();
  private final Reverb reverb = new Reverb();
  private final ArrayDeque<SoundingNote> voices = new ArrayDeque<>();
  private final List<Timbre> timbres;
  private final List<Note> notes;
  private final long[] onsets;
  private final double strength;
  private final float[] leftMix = new float[WaveFile.BLOCK];
  private final float[] rightMix = new float[WaveFile.BLOCK];
  private int next;

  Orchestra(TimingSheet timing, SoundLayout layout) {
    this.layout = layout;
    this.timing = timing;
    this.notes = timing.music().score().notes();
    this.timbres = timing.music().score().parts().stream().map(Timbre::of).toList();
    this.onsets = new long[notes.size()];
    for (int i = 0; i < onsets.length; i++) {
      onsets[i] = sampleOf(notes.get(i).onTick());
    }
    this.strength = Math.min(LOUDEST, LOUDNESS / Math.max(0.5, loudestMoment()));
  }

  private long sampleOf(long tick) {
    Seconds inFilm = timing.clock().filmTime(timing.music().tempo().secondsAt(tick));
    return layout.sampleAt(inFilm);
  }

  /** Even, so that whoever turns a soft passage up is not hurt by the next loud one. */
  private static double loudness(Note note) {
    return note.velocity() / 127.0;
  }

  /** Root of the sum of squares of all notes that sound at once, at its greatest. */
  private double loudestMoment() {
    PriorityQueue<Note> sounding = new PriorityQueue<>(Comparator.comparingLong(Note::offTick));
    double power = 0;
    double greatest = 0;
    for (Note note : notes) {
      while (!sounding.isEmpty() && sounding.element().offTick() <= note.onTick()) {
        double ended = loudness(sounding.remove());
        power -= ended * ended;
      }
      sounding.add(note);
      power += loudness(note) * loudness(note);
      greatest = Math.max(greatest, power);
    }
    return StrictMath.sqrt(greatest);
  }

  @Override
  public void addTo(float[] left, float[] right, long from, int length) {
    Arrays.fill(leftMix, 0);
    Arrays.fill(rightMix, 0);
    List<SoundingNote> beginners = new ArrayList<>();
    playSounding(length);
    while (next < onsets.length && onsets[next] < from + length) {
      SoundingNote voice = voice(notes.get(next), onsets[next]);
      int start = (int) Math.max(0, onsets[next] - from);
      if (voice.addTo(leftMix, rightMix, start, length)) {
        beginners.add(voice);
      }
      next++;
    }
    voices.addAll(beginners);
    hushTheOldest();
    reverb.addTo(leftMix, rightMix, length, ROOM);
    for (int i = 0; i < length; i++) {
      left[i] += bent(leftMix[i]);
      right[i] += bent(rightMix[i]);
    }
  }

  private void playSounding(int length) {
    for (Iterator<SoundingNote> all = voices.iterator(); all.hasNext(); ) {
      if (!all.next().addTo(leftMix, rightMix, 0, length)) {
        all.remove();
      }
    }
  }

  private void hushTheOldest() {
    int tooMany = voices.size() - MOST_VOICES;
    Iterator<SoundingNote> oldestFirst = voices.iterator();
    for (int i = 0; i < tooMany; i++) {
      oldestFirst.next().hush();
    }
  }

  private SoundingNote voice(Note note, long onset) {
    Part part = timing.music().score().parts().get(note.part());
    double loud = strength * loudness(note);
    double pan = pan(part.index(), timbres.size());
    if (part.drums()) {
      return new DrumVoice(drums.sound(note.pitch()), loud, pan);
    }
    long length = sampleOf(note.offTick()) - onset;
    return new ToneVoice(timbres.get(part.index()), tables, note.pitch(), length, loud, pan);
  }

  /** Where a part sits, −1 left to 1 right. */
  static double pan(int part, int parts) {
    return parts == 1 ? 0 : WIDTH * (2.0 * part / (parts - 1) - 1);
  }

  /** As it is up to 0.7; above that ever flatter, always below 1. */
  private static float bent(float value) {
    float size = Math.abs(value);
    if (size <= 0.7f) {
      return value;
    }
    float above = (size - 0.7f) / 0.3f;
    return Math.copySign(0.7f + 0.3f * above / (1 + above), value);
  }
}
