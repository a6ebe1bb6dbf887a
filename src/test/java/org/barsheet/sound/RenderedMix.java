package org.barsheet.sound;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import javax.sound.midi.ShortMessage;
import org.barsheet.score.Note;
import org.barsheet.score.Score;

/** A score as a bank of sounds plays it, in a time of its own, with noise, for evaluations. */
public final class RenderedMix {

  private final Score score;
  private final DoubleUnaryOperator timeOf;
  private final SoundBank bank;

  /**
   * A mix to be rendered.
   *
   * @param timeOf second of the mix for a second of the score
   */
  public RenderedMix(Score score, DoubleUnaryOperator timeOf, SoundBank bank) {
    this.score = score;
    this.timeOf = timeOf;
    this.bank = bank;
  }

  private record Event(long at, boolean begins, Note note) {}

  /**
   * Writes one channel, 48,000 samples a second.
   *
   * @param noise strength of the noise under it; after the music there are three seconds of louder
   *     noise
   */
  public void write(Path file, double noise, long seed) throws IOException {
    List<Event> events = new ArrayList<>();
    for (Note note : score.notes()) {
      long on = micros(note.onTick());
      events.add(new Event(on, true, note));
      events.add(new Event(Math.max(on + 5000, micros(note.offTick())), false, note));
    }
    events.sort(Comparator.comparingLong(Event::at).thenComparing(Event::begins));
    double end = micros(score.endTick()) / 1e6;
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      SampleSource source = played(events);
      Random random = new Random(seed);
      SampleSource noisy =
          (left, right, from, length) -> {
            source.addTo(left, right, from, length);
            for (int i = 0; i < length; i++) {
              double loud = (from + i) / 48_000.0 > end + 1.5 ? 0.03 : noise;
              left[i] = (left[i] + right[i]) / 2 + (float) (loud * random.nextGaussian());
            }
          };
      new WaveFile(1, (long) ((end + 4.5) * 48_000), 0, "mix", List.of()).write(noisy, out);
    }
  }

  private long micros(long tick) {
    return Math.round(1e6 * timeOf.applyAsDouble(score.tempo().secondsAt(tick).toDouble()));
  }

  private SampleSource played(List<Event> events) throws IOException {
    List<Optional<SoundBank.Sound>> sounds = BankParts.of(score.parts(), bank).sounds();
    List<OfflineSynthesizer> synths = new ArrayList<>();
    int next = 16;
    int[] channel = new int[sounds.size()];
    OfflineSynthesizer[] of = new OfflineSynthesizer[sounds.size()];
    for (int part = 0; part < sounds.size(); part++) {
      if (next >= 16) {
        synths.add(OfflineSynthesizer.open());
        next = 0;
      }
      SoundBank.Sound sound = sounds.get(part).orElseThrow();
      of[part] = synths.get(synths.size() - 1);
      channel[part] = sound.drums() ? 9 : next++;
      next += next == 9 ? 1 : 0;
      of[part].load(sound.instrument());
      of[part].send(ShortMessage.CONTROL_CHANGE, channel[part], 0, sound.bank() >> 7, 0);
      of[part].send(ShortMessage.CONTROL_CHANGE, channel[part], 32, sound.bank() & 127, 0);
      of[part].send(ShortMessage.PROGRAM_CHANGE, channel[part], sound.program(), 0, 0);
    }
    for (Event e : events) {
      int part = e.note().part();
      of[part].send(
          e.begins() ? ShortMessage.NOTE_ON : ShortMessage.NOTE_OFF,
          channel[part],
          e.note().pitch(),
          e.begins() ? e.note().velocity() : 0,
          e.at());
    }
    return (left, right, from, length) -> {
      try {
        for (OfflineSynthesizer one : synths) {
          one.addTo(left, right, length, 0.25f);
        }
      } catch (IOException broken) {
        throw new java.io.UncheckedIOException(broken);
      }
    };
  }
}
