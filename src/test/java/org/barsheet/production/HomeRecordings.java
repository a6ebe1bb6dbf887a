package org.barsheet.production;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;

/**
 * An invented production: a score for six, and what each of them recorded at home along with the
 * guide: begun at any moment, by a clock that drifts, played loosely, with noise, a room, and now
 * and then the click in it. The tones are none of the guide's.
 */
final class HomeRecordings {

  static final List<String> NAMES =
      List.of("celesta", "flute", "cello", "violins", "clarinet", "horn");

  private static final int[] PROGRAMS = {8, 73, 42, 48, 71, 60};
  private static final int[] LOWEST = {72, 67, 40, 60, 52, 48};
  private static final int TICKS = 480;

  /**
   * One tone.
   *
   * @param at in quarter notes
   */
  private record Tone(int pitch, double at, double length) {}

  /**
   * What one of them sent.
   *
   * @param start of its first sample, in seconds from the music's start
   * @param drift of its clock in millionths, above 0 where it ran slow
   */
  record Sent(
      String performer, Path file, double start, double drift, double seconds, boolean leaks) {}

  private final Random random;
  private final int bars;
  final double secondsPerBeat;
  private final List<List<Tone>> parts = new ArrayList<>();

  HomeRecordings(long seed, int bars) {
    this.random = new Random(seed);
    this.bars = bars;
    this.secondsPerBeat = 60.0 / (80 + random.nextInt(45));
    for (int part = 0; part < NAMES.size(); part++) {
      parts.add(part(LOWEST[part], 1 + part % 3));
    }
  }

  private List<Tone> part(int lowest, int steps) {
    List<Tone> tones = new ArrayList<>();
    int pitch = lowest + 7;
    for (double at = random.nextInt(8) / 2.0; at < 4.0 * bars - 1; ) {
      double length = (1 + random.nextInt(2 * steps)) / 2.0;
      if (random.nextInt(6) > 0) {
        tones.add(new Tone(pitch, at, length));
      }
      pitch = Math.max(lowest, Math.min(lowest + 19, pitch + random.nextInt(9) - 4));
      at += length;
    }
    return tones;
  }

  double seconds() {
    return 4.0 * bars * secondsPerBeat;
  }

  /** Writes the score: a track each, named like the performer. */
  void writeScore(Path file) throws IOException {
    try {
      Sequence sequence = new Sequence(Sequence.PPQ, TICKS);
      int tempo = (int) Math.round(1_000_000 * secondsPerBeat);
      byte[] bytes = {(byte) (tempo >> 16), (byte) (tempo >> 8), (byte) tempo};
      Track first = sequence.createTrack();
      first.add(new MidiEvent(new MetaMessage(0x51, bytes, 3), 0));
      first.add(new MidiEvent(new MetaMessage(0x58, new byte[] {4, 2, 24, 8}, 4), 0));
      for (int part = 0; part < parts.size(); part++) {
        Track track = sequence.createTrack();
        byte[] name = NAMES.get(part).getBytes(StandardCharsets.US_ASCII);
        track.add(new MidiEvent(new MetaMessage(3, name, name.length), 0));
        track.add(message(ShortMessage.PROGRAM_CHANGE, part, PROGRAMS[part], 0, 0));
        for (Tone tone : parts.get(part)) {
          track.add(message(ShortMessage.NOTE_ON, part, tone.pitch(), 90, tone.at()));
          double end = tone.at() + 0.95 * tone.length();
          track.add(message(ShortMessage.NOTE_OFF, part, tone.pitch(), 0, end));
        }
      }
      MidiSystem.write(sequence, 1, file.toFile());
    } catch (InvalidMidiDataException impossible) {
      throw new IOException(impossible);
    }
  }

  private static MidiEvent message(int kind, int channel, int first, int second, double quarters)
      throws InvalidMidiDataException {
    return new MidiEvent(
        new ShortMessage(kind, channel, first, second), Math.round(quarters * TICKS));
  }

  /** One of them records a take and sends it as a WAV file. */
  Sent record(int part, Path file) throws IOException {
    int rate = random.nextInt(3) == 0 ? 44_100 : 48_000;
    double start = -14 + 16 * random.nextDouble();
    double drift = 160 * (random.nextDouble() - 0.5);
    double seconds = Math.min(seconds() - start + 2, 0.75 * seconds() + 20 * random.nextDouble());
    float[] samples = new float[(int) (seconds * rate)];
    double loose = 0.006 + 0.008 * random.nextDouble();
    double attack = 0.003 + 0.012 * random.nextDouble();
    for (Tone tone : parts.get(part)) {
      double at = tone.at() * secondsPerBeat + loose * random.nextGaussian();
      tone(samples, rate, tone, (at - start) / (1 + drift / 1e6), attack);
    }
    boolean leaks = random.nextInt(3) > 0;
    if (leaks) {
      leak(samples, rate, start, drift, 0.004 + 0.02 * random.nextDouble());
    }
    room(samples, rate);
    double noise = 0.0005 + 0.003 * random.nextDouble();
    for (int i = 0; i < samples.length; i++) {
      samples[i] += (float) (noise * random.nextGaussian());
    }
    write(samples, rate, file);
    return new Sent(NAMES.get(part), file, start, drift, seconds, leaks);
  }

  private void tone(float[] samples, int rate, Tone tone, double at, double attack) {
    double hertz = 440 * Math.pow(2, (tone.pitch() - 69) / 12.0);
    double length = 0.95 * tone.length() * secondsPerBeat;
    double loud = 0.12 * (0.6 + 0.4 * random.nextDouble());
    double bright = 0.4 + 0.5 * random.nextDouble();
    int last = (int) Math.min(samples.length, (at + length) * rate);
    for (int i = (int) Math.max(0, Math.ceil(at * rate)); i < last; i++) {
      double t = (double) i / rate - at;
      double end = Math.min(1, (length - t) / 0.02);
      double strength = loud * Math.min(1, t / attack) * Math.exp(-1.5 * t) * end;
      double partial = 1;
      for (int k = 1; k <= 5; k++) {
        samples[i] += (float) (strength * partial * Math.sin(2 * Math.PI * hertz * k * t));
        partial *= bright;
      }
    }
  }

  /** The click as it comes out of headphones. */
  private void leak(float[] samples, int rate, double start, double drift, double strength) {
    for (int beat = -8; beat < 4 * bars; beat++) {
      double at = (beat * secondsPerBeat - start) / (1 + drift / 1e6);
      for (int i = 0; i < rate / 50; i++) {
        int place = (int) Math.round(at * rate) + i;
        if (place >= 0 && place < samples.length) {
          double t = (double) i / rate;
          samples[place] +=
              (float) (strength * Math.exp(-t / 0.006) * Math.cos(2 * Math.PI * 1175 * t));
        }
      }
    }
  }

  /** A few reflections of a small room. */
  private void room(float[] samples, int rate) {
    for (int echo = 0; echo < 3; echo++) {
      int delay = (int) (rate * (0.007 + 0.03 * random.nextDouble()));
      for (int i = samples.length - 1; i >= delay; i--) {
        samples[i] += 0.25f * samples[i - delay];
      }
    }
  }

  private static void write(float[] samples, int rate, Path file) throws IOException {
    byte[] bytes = new byte[2 * samples.length];
    for (int i = 0; i < samples.length; i++) {
      int value = Math.round(32_000 * Math.max(-1, Math.min(1, samples[i])));
      bytes[2 * i] = (byte) value;
      bytes[2 * i + 1] = (byte) (value >> 8);
    }
    AudioFormat format = new AudioFormat(rate, 16, 1, true, false);
    Files.createDirectories(Objects.requireNonNull(file.getParent()));
    AudioSystem.write(
        new AudioInputStream(new ByteArrayInputStream(bytes), format, samples.length),
        AudioFileFormat.Type.WAVE,
        file.toFile());
  }
}
