package org.barsheet.cli;

import java.io.IOException;
import java.nio.file.Path;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;

/** Eight bars of quarters at 120: a film short enough to be made again and again. */
final class ShortScore {

  private static final int TICKS = 480;

  private ShortScore() {}

  static void write(Path file) throws IOException {
    try {
      Sequence sequence = new Sequence(Sequence.PPQ, TICKS);
      Track track = sequence.createTrack();
      for (int beat = 0; beat < 32; beat++) {
        int pitch = 60 + beat % 5;
        long at = (long) beat * TICKS;
        track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_ON, pitch, 90), at));
        track.add(
            new MidiEvent(new ShortMessage(ShortMessage.NOTE_OFF, pitch, 0), at + TICKS - 10));
      }
      MidiSystem.write(sequence, 0, file.toFile());
    } catch (InvalidMidiDataException impossible) {
      throw new AssertionError(impossible);
    }
  }
}
