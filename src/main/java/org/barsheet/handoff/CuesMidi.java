package org.barsheet.handoff;

import java.io.IOException;
import java.io.OutputStream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.Track;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/**
 * The score with the film in it (Standard MIDI File 1.0): a marker, FF 06, for every return of a
 * motif, and one for its accent where that is not its first note; a cue point, FF 07, where a shot
 * begins. They stand in the first track, where programs look for them. A shot that begins before
 * the music stands on tick 0, and so does a text, FF 01, with the film's rate.
 */
final class CuesMidi {

  static final int TEXT = 0x01;
  static final int MARKER = 0x06;
  static final int CUE_POINT = 0x07;

  private CuesMidi() {}

  static void write(FilmSheet sheet, OutputStream out) throws IOException {
    TimingSheet timing = sheet.timing();
    try {
      Sequence sequence = ScoreSequence.of(timing.music().score(), timing.plan().music().score());
      Track first = sequence.getTracks()[0];
      String begins = "music starts on film frame " + timing.clock().musicStartFrame();
      String counting = FilmWords.counting(timing.plan().film());
      first.add(ScoreSequence.text(TEXT, begins + "; " + counting, 0));
      for (Cue cue : timing.cues()) {
        if (cue.kind() == Cue.Kind.RETURN) {
          first.add(ScoreSequence.text(MARKER, line(cue.title()), fileTick(timing, cue.at())));
          if (cue.hasAccentElsewhere()) {
            String words = line(cue.title() + " accent");
            first.add(ScoreSequence.text(MARKER, words, fileTick(timing, cue.accentAt())));
          }
        }
      }
      for (Shot shot : timing.shots()) {
        Seconds cut = timing.clock().scoreTime(shot.frames().start());
        String words = "panel " + shot.panel().name() + ": " + shot.panel().action();
        first.add(ScoreSequence.text(CUE_POINT, line(words), fileTick(timing, cut)));
      }
      MidiSystem.write(sequence, sequence.getTracks().length == 1 ? 0 : 1, out);
    } catch (InvalidMidiDataException impossible) {
      throw new IOException("the score cannot be written as MIDI", impossible);
    }
  }

  private static long fileTick(TimingSheet timing, Seconds fromTick0) {
    BigFraction tick = timing.music().tempo().tickAt(fromTick0);
    return ScoreSequence.fileTick(timing.music().score(), tick);
  }

  private static String line(String words) {
    return words.replaceAll("\\p{Cntrl}+", " ").strip();
  }
}
