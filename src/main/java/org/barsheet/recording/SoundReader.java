package org.barsheet.recording;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;

/**
 * Decodes a recording to one channel: WAV and AIFF by the JDK, everything else, and the sound of a
 * video, by ffmpeg where it is on the PATH. All channels are heard in equal parts, and what lies
 * above 11 kHz is left out. Times are those of the file: the sound of a video that begins later
 * than its image has silence before it.
 */
public final class SoundReader {

  /** Rates below twice this are kept as they are. */
  private static final int LEAST_RATE = 22_050;

  /** What ffmpeg is asked for. */
  private static final int DECODED_RATE = 24_000;

  private static final int LONGEST_SECONDS = 3 * 3600;

  private SoundReader() {}

  /**
   * Reads a file.
   *
   * @throws InputException if it can't be decoded, or is longer than three hours
   */
  public static Sound read(Path file) {
    return read(file, FfmpegProgram.onPath());
  }

  /** The same with a certain ffmpeg, or none. */
  static Sound read(Path file, Optional<Path> ffmpeg) {
    try (AudioInputStream stream = AudioSystem.getAudioInputStream(file.toFile())) {
      if (isPlain(stream.getFormat())) {
        return decoded(file, stream);
      }
    } catch (UnsupportedAudioFileException other) {
      // ffmpeg knows more formats.
    } catch (IOException unreadable) {
      throw damaged(file);
    }
    Path program = ffmpeg.orElseThrow(() -> needsFfmpeg(file));
    return new FfmpegSound(program).read(file, DECODED_RATE);
  }

  private static boolean isPlain(AudioFormat format) {
    return format.getSampleRate() > 0 && format.getChannels() > 0 && Pcm.reads(format);
  }

  private static Sound decoded(Path file, AudioInputStream stream) throws IOException {
    AudioFormat format = stream.getFormat();
    double rate = format.getSampleRate();
    int every = Math.max(1, (int) (rate / LEAST_RATE));
    return new Sound(
        samples(file, new BufferedInputStream(stream, 1 << 16), format, every), rate / every);
  }

  private static float[] samples(Path file, InputStream in, AudioFormat format, int every)
      throws IOException {
    Pcm pcm = new Pcm(format);
    Decimator decimator = new Decimator(every);
    byte[] frame = new byte[pcm.frameBytes()];
    long most = (long) (LONGEST_SECONDS * (double) format.getSampleRate());
    for (long taken = 0; in.readNBytes(frame, 0, frame.length) == frame.length; taken++) {
      if (taken == most) {
        throw tooLong(file);
      }
      decimator.take(pcm.mono(frame));
    }
    return decimator.finish();
  }

  /** Samples that ffmpeg writes. */
  static Sound decoded(Path file, InputStream floats, int rate) throws IOException {
    AudioFormat format =
        new AudioFormat(AudioFormat.Encoding.PCM_FLOAT, rate, 32, 1, 4, rate, false);
    return new Sound(samples(file, new BufferedInputStream(floats, 1 << 16), format, 1), rate);
  }

  private static InputException tooLong(Path file) {
    return new InputException(
        Problem.ofFile(file.toString(), "is longer than three hours", "cut it to the music"));
  }

  static InputException damaged(Path file) {
    return new InputException(
        Problem.ofFile(
            file.toString(), "the sound in this file can't be read", "export it again as WAV"));
  }

  private static InputException needsFfmpeg(Path file) {
    return new InputException(
        Problem.ofFile(
            file.toString(),
            "only WAV and AIFF can be read without ffmpeg, which isn't installed",
            "install ffmpeg, or export the sound as WAV"));
  }
}
