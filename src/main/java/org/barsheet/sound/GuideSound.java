package org.barsheet.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.recording.Sound;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/**
 * What somebody plays along with the guide, as sound to compare recordings with: their part alone,
 * every note struck, because slow attacks would say less of when it begins.
 */
public final class GuideSound {

  /** Every sample is the mean of so many of the file's. */
  private static final int MEAN_OF = 2;

  private static final double STRENGTH = 0.3;

  private final TimingSheet timing;
  private final SoundLayout layout;
  private final List<Note> notes;
  private final Wavetables tables = new Wavetables();
  private final List<SoundingNote> voices = new ArrayList<>();
  private int next;

  private GuideSound(TimingSheet timing, List<Note> notes) {
    this.timing = timing;
    this.layout = SoundLayout.of(timing);
    this.notes = notes;
  }

  /**
   * One part from the first sample of the sound files on; every part where the score has none of
   * that name.
   */
  public static Sound of(TimingSheet timing, String part) {
    Optional<Part> own =
        timing.music().score().parts().stream().filter(p -> p.name().equals(part)).findFirst();
    List<Note> notes =
        own.map(timing.music().score()::notesOf).orElse(timing.music().score().notes());
    return new GuideSound(timing, notes).sound();
  }

  private Sound sound() {
    float[] samples = new float[Math.toIntExact(layout.lengthSamples() / MEAN_OF)];
    float[] left = new float[WaveFile.BLOCK];
    float[] right = new float[WaveFile.BLOCK];
    for (long from = 0; from < layout.lengthSamples(); from += WaveFile.BLOCK) {
      int length = (int) Math.min(WaveFile.BLOCK, layout.lengthSamples() - from);
      Arrays.fill(left, 0);
      Arrays.fill(right, 0);
      play(left, right, from, length);
      for (int i = 0; i + 1 < length; i += MEAN_OF) {
        samples[(int) ((from + i) / MEAN_OF)] =
            (left[i] + right[i] + left[i + 1] + right[i + 1]) / (2 * MEAN_OF);
      }
    }
    return new Sound(samples, (double) SoundLayout.SAMPLE_RATE / MEAN_OF);
  }

  private void play(float[] left, float[] right, long from, int length) {
    voices.removeIf(voice -> !voice.addTo(left, right, 0, length));
    while (next < notes.size() && sampleOf(notes.get(next).onTick()) < from + length) {
      Note note = notes.get(next++);
      long onset = sampleOf(note.onTick());
      ToneVoice voice =
          new ToneVoice(
              Timbre.STRUCK,
              tables,
              note.pitch(),
              sampleOf(note.offTick()) - onset,
              STRENGTH * note.velocity() / 127.0,
              0);
      if (voice.addTo(left, right, (int) Math.max(0, onset - from), length)) {
        voices.add(voice);
      }
    }
  }

  private long sampleOf(long tick) {
    Seconds inFilm = timing.clock().filmTime(timing.music().tempo().secondsAt(tick));
    return layout.sampleAt(inFilm);
  }
}
