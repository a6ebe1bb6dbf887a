package org.barsheet.sound;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Map;
import javax.sound.midi.Instrument;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Synthesizer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.timing.SoundLayout;

/**
 * The JDK's synthesizer, playing into a stream as fast as it is read instead of through a sound
 * card. That door is not public: the jar's manifest opens it ({@code Add-Exports}), and it is
 * reached by name, so that a Java without it is told and all else still works. It has only the
 * instruments it is given: without this care it would make up a bank of its own, another on every
 * machine, and keep it in the person's home.
 */
final class OfflineSynthesizer implements AutoCloseable {

  /** MIDI channels; drums have the tenth. */
  static final int CHANNELS = 16;

  static final int DRUMS = 9;

  /**
   * Samples it works out at once. What it is sent is heard on its own sample, but a block late: the
   * first block is thrown away.
   */
  private static final int BLOCK = 320;

  private static final String PACKAGE = "com.sun.media.sound";
  private static final int FLOAT_BYTES = 4;
  private static final int FRAME_BYTES = 2 * FLOAT_BYTES;

  /** Floating samples, so that nothing is cut off before its strength is known. */
  private static final AudioFormat FORMAT =
      new AudioFormat(
          AudioFormat.Encoding.PCM_FLOAT,
          SoundLayout.SAMPLE_RATE,
          8 * FLOAT_BYTES,
          2,
          FRAME_BYTES,
          SoundLayout.SAMPLE_RATE,
          false);

  /**
   * All that its sound depends on is said, so that nobody's own settings count. Its own control of
   * loudness would delay the sound by a block.
   */
  private static final Map<String, Object> SETTINGS =
      Map.of(
          "load default soundbank", false,
          "auto gain control", false,
          "interpolation", "cubic",
          "control rate", (float) SoundLayout.SAMPLE_RATE / BLOCK,
          "max polyphony", 256,
          "reverb", true,
          "light reverb", true,
          "chorus", false,
          "large mode", false);

  private final Synthesizer synthesizer;
  private final AudioInputStream stream;
  private final Receiver receiver;
  private byte[] bytes = new byte[0];
  private boolean begun;

  private OfflineSynthesizer(Synthesizer synthesizer, AudioInputStream stream) {
    this.synthesizer = synthesizer;
    this.stream = stream;
    try {
      this.receiver = synthesizer.getReceiver();
    } catch (MidiUnavailableException closed) {
      throw new IllegalStateException("it has just been opened", closed);
    }
  }

  /**
   * Opens one with no instruments.
   *
   * @throws InputException if this Java keeps it closed
   */
  static OfflineSynthesizer open() {
    String before = System.getProperty(NoPreferences.PROPERTY);
    System.setProperty(NoPreferences.PROPERTY, NoPreferences.class.getName());
    try {
      Object made = Class.forName(PACKAGE + ".SoftSynthesizer").getConstructor().newInstance();
      Object stream =
          Class.forName(PACKAGE + ".AudioSynthesizer")
              .getMethod("openStream", AudioFormat.class, Map.class)
              .invoke(made, FORMAT, SETTINGS);
      return new OfflineSynthesizer((Synthesizer) made, (AudioInputStream) stream);
    } catch (ReflectiveOperationException closed) {
      throw new InputException(
          Problem.ofFile(
              "--sound-bank",
              "this Java ("
                  + System.getProperty("java.vendor")
                  + " "
                  + Runtime.version().feature()
                  + ") keeps its synthesizer closed",
              "start barsheet with java -jar, or with java --add-exports java.desktop/"
                  + PACKAGE
                  + "=ALL-UNNAMED on a JDK 17 or later; without --sound-bank the guide has its own"
                  + " sounds"));
    } finally {
      if (before == null) {
        System.clearProperty(NoPreferences.PROPERTY);
      } else {
        System.setProperty(NoPreferences.PROPERTY, before);
      }
    }
  }

  /**
   * Gives it an instrument, under the instrument's own program.
   *
   * @throws IOException if the instrument is damaged
   */
  void load(Instrument instrument) throws IOException {
    try {
      if (!synthesizer.loadInstrument(instrument)) {
        throw new IOException("the synthesizer does not take " + instrument);
      }
    } catch (RuntimeException damaged) {
      throw new IOException(damaged);
    }
  }

  /**
   * Has something happen.
   *
   * @param microseconds from the stream's first sample
   */
  void send(int command, int channel, int data1, int data2, long microseconds) {
    try {
      receiver.send(new ShortMessage(command, channel, data1, data2), microseconds);
    } catch (InvalidMidiDataException impossible) {
      throw new IllegalStateException("notes are checked when they are made", impossible);
    }
  }

  /**
   * Adds the next samples, times a factor, to both channels.
   *
   * @throws IOException if an instrument is damaged, so that it cannot be played
   */
  void addTo(float[] left, float[] right, int length, float factor) throws IOException {
    if (bytes.length < length * FRAME_BYTES) {
      bytes = new byte[length * FRAME_BYTES];
    }
    int read = played(length * FRAME_BYTES);
    ByteBuffer samples = ByteBuffer.wrap(bytes, 0, read).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; samples.remaining() >= FRAME_BYTES; i++) {
      left[i] += samples.getFloat() * factor;
      right[i] += samples.getFloat() * factor;
    }
  }

  private int played(int wanted) throws IOException {
    try {
      if (!begun) {
        stream.skipNBytes(BLOCK * FRAME_BYTES);
        begun = true;
      }
      return stream.readNBytes(bytes, 0, wanted);
    } catch (RuntimeException damaged) {
      // It trusts what a bank says of its sounds.
      throw new IOException(damaged);
    }
  }

  @Override
  public void close() {
    synthesizer.close();
  }
}
