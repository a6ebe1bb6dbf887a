package org.barsheet.handoff;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.score.Bar;
import org.barsheet.score.Division;
import org.barsheet.score.GeneralMidi;
import org.barsheet.score.Mark;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/**
 * The score as a MIDI sequence. A file without faults is taken with all its events; one that had to
 * be mended or unwrapped is built anew from what was read: parts, notes, tempo, meters, marks.
 */
final class ScoreSequence {

  private static final int TRACK_NAME = 0x03;
  private static final int TEMPO = 0x51;
  private static final int TIME_SIGNATURE = 0x58;
  private static final int CLOCKS_PER_QUARTER = 24;
  private static final int THIRTY_SECONDS_PER_QUARTER = 8;
  private static final BigFraction MICROSECONDS = BigFraction.of(1_000_000);

  private final Score score;
  private final Sequence sequence;

  private ScoreSequence(Score score, Sequence sequence) {
    this.score = score;
    this.sequence = sequence;
  }

  /** The sequence of a score that was read from a file. */
  static Sequence of(Score score, Path file) throws InvalidMidiDataException, IOException {
    if (score.readingNotes().isEmpty() && Files.isRegularFile(file)) {
      try {
        return MidiSystem.getSequence(file.toFile());
      } catch (InvalidMidiDataException wrapped) {
        // A score inside a RIFF file is sound, and still nothing that this reader takes.
        return anew(score);
      }
    }
    return anew(score);
  }

  private static Sequence anew(Score score) throws InvalidMidiDataException {
    ScoreSequence anew = new ScoreSequence(score, emptySequence(score.division()));
    anew.addConductor();
    for (Part part : score.parts()) {
      anew.addPart(part);
    }
    return anew.sequence;
  }

  private static Sequence emptySequence(Division division) throws InvalidMidiDataException {
    if (division instanceof Division.PerQuarter quarter) {
      return new Sequence(Sequence.PPQ, quarter.ticks());
    }
    Division.PerFrame frame = (Division.PerFrame) division;
    boolean whole = frame.rate().denominator() == 1;
    float type = whole ? frame.rate().nominal() : Sequence.SMPTE_30DROP;
    return new Sequence(type, frame.ticks());
  }

  /**
   * The file's tick, to the nearest, of a tick of the score, which counts finer than its file.
   *
   * @param tick possibly a fraction; a negative one gives 0
   */
  static long fileTick(Score score, BigFraction tick) {
    BigFraction inFile;
    if (score.division() instanceof Division.PerQuarter quarter) {
      inFile = tick.multiply(quarter.ticks()).divide(score.ticksPerQuarter());
    } else {
      Division.PerFrame frame = (Division.PerFrame) score.division();
      FrameRate rate = frame.rate();
      BigFraction seconds = score.tempo().secondsAt(tick).value();
      inFile = seconds.multiply(rate.framesPerSecond()).multiply(frame.ticks());
    }
    return Math.max(0, Math.round(inFile.doubleValue()));
  }

  private long fileTick(long tick) {
    return fileTick(score, BigFraction.of(tick));
  }

  private void addConductor() throws InvalidMidiDataException {
    Track track = sequence.createTrack();
    if (score.division() instanceof Division.PerQuarter) {
      for (TempoMap.Stretch stretch : score.tempo().stretches()) {
        long micros = Math.round(stretch.perQuarter().value().multiply(MICROSECONDS).doubleValue());
        byte[] data = {(byte) (micros >> 16), (byte) (micros >> 8), (byte) micros};
        track.add(meta(TEMPO, data, fileTick(stretch.startTick())));
      }
    }
    addMeters(track);
    for (Mark mark : score.marks()) {
      int type = mark.kind() == Mark.Kind.MARKER ? CuesMidi.MARKER : CuesMidi.CUE_POINT;
      track.add(text(type, mark.text(), fileTick(mark.tick())));
    }
  }

  private void addMeters(Track track) throws InvalidMidiDataException {
    Meter before = null;
    for (Bar bar : score.bars().bars()) {
      Meter meter = bar.meter();
      if (!meter.equals(before)) {
        byte[] data = {
          (byte) meter.numerator(),
          (byte) Integer.numberOfTrailingZeros(meter.denominator()),
          CLOCKS_PER_QUARTER,
          THIRTY_SECONDS_PER_QUARTER
        };
        track.add(meta(TIME_SIGNATURE, data, fileTick(bar.startTick())));
      }
      before = meter;
    }
  }

  private void addPart(Part part) throws InvalidMidiDataException {
    Track track = sequence.createTrack();
    int channel = part.channel() - 1;
    track.add(text(TRACK_NAME, part.name(), 0));
    int program = GeneralMidi.programOf(part.instrument()).orElse(0);
    track.add(new MidiEvent(new ShortMessage(ShortMessage.PROGRAM_CHANGE, channel, program, 0), 0));
    List<Note> notes = score.notesOf(part);
    for (Note note : notes) {
      track.add(event(ShortMessage.NOTE_ON, channel, note, note.velocity(), note.onTick()));
      track.add(event(ShortMessage.NOTE_OFF, channel, note, 0, note.offTick()));
    }
  }

  private MidiEvent event(int command, int channel, Note note, int velocity, long tick)
      throws InvalidMidiDataException {
    ShortMessage message = new ShortMessage(command, channel, note.pitch(), velocity);
    return new MidiEvent(message, fileTick(tick));
  }

  /** A text event, UTF-8. */
  static MidiEvent text(int type, String words, long tick) throws InvalidMidiDataException {
    return meta(type, words.getBytes(StandardCharsets.UTF_8), tick);
  }

  private static MidiEvent meta(int type, byte[] data, long tick) throws InvalidMidiDataException {
    return new MidiEvent(new MetaMessage(type, data, data.length), tick);
  }
}
