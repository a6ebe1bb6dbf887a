package org.barsheet.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.barsheet.score.WrittenBars.MeterEvent;
import org.barsheet.score.WrittenTempo.TempoEvent;

/** Everything a score is made of, gathered from all tracks. */
final class ScoreEvents {

  /** Most notes that are read in one file. */
  static final int MOST_NOTES = 1_000_000;

  private final ScoreFile file;
  private final ReadingNotes readingNotes;
  private final List<SoundingNote> notes = new ArrayList<>();
  private final List<TempoEvent> tempos = new ArrayList<>();
  private final List<MeterEvent> meters = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final Set<TrackChannel> pedalsHeld = new TreeSet<>();
  private final TreeSet<Long> pedalTicks = new TreeSet<>();
  private final Map<Integer, String> trackNames = new TreeMap<>();
  private final Map<Integer, String> instrumentNames = new TreeMap<>();
  private final Map<TrackChannel, Integer> programs = new TreeMap<>();
  private final Map<Integer, Integer> programOfChannel = new TreeMap<>();
  private int hanging;
  private long firstHanging = Long.MAX_VALUE;

  /** A note before its part is known; channels from 0. */
  record SoundingNote(int track, int channel, int pitch, int velocity, long onTick, long offTick) {}

  /** One channel of one track; channels from 0. */
  record TrackChannel(int track, int channel) implements Comparable<TrackChannel> {
    @Override
    public int compareTo(TrackChannel other) {
      return Comparator.comparingInt(TrackChannel::track)
          .thenComparingInt(TrackChannel::channel)
          .compare(this, other);
    }
  }

  ScoreEvents(ScoreFile file, ReadingNotes readingNotes) {
    this.file = file;
    this.readingNotes = readingNotes;
  }

  void addNote(SoundingNote note) {
    if (notes.size() == MOST_NOTES) {
      throw file.refused(
          0, "the file holds more than " + MOST_NOTES + " notes", "export a shorter part");
    }
    notes.add(note);
  }

  void addProgram(int track, int channel, int program) {
    programs.putIfAbsent(new TrackChannel(track, channel), program);
    programOfChannel.putIfAbsent(channel, program);
  }

  /** The damper pedal stands up or down from here on; ticks of one track never go back. */
  void addPedal(int track, int channel, boolean down, long tick) {
    TrackChannel line = new TrackChannel(track, channel);
    if (!down) {
      pedalsHeld.remove(line);
    } else if (pedalsHeld.add(line)) {
      pedalTicks.add(tick);
    }
  }

  /** Remembers that a note is still sounding when its track ends. */
  void noteHanging(long offset) {
    hanging++;
    firstHanging = Math.min(firstHanging, offset);
  }

  void addMeta(int track, int type, byte[] data, long tick, long offset) {
    switch (type) {
      case MetaType.TRACK_NAME -> trackNames.putIfAbsent(track, MidiText.decode(data));
      case MetaType.INSTRUMENT_NAME -> instrumentNames.putIfAbsent(track, MidiText.decode(data));
      case MetaType.MARKER -> marks.add(new Mark(Mark.Kind.MARKER, tick, MidiText.decode(data)));
      case MetaType.CUE_POINT ->
          marks.add(new Mark(Mark.Kind.CUE_POINT, tick, MidiText.decode(data)));
      case MetaType.TEMPO ->
          WrittenTempo.read(data, tick, offset, readingNotes).ifPresent(tempos::add);
      case MetaType.TIME_SIGNATURE ->
          WrittenBars.read(data, tick, offset, readingNotes).ifPresent(meters::add);
      default -> {}
    }
  }

  /** To be called when all tracks are in: what can only be said then. */
  void finish() {
    if (hanging > 0) {
      readingNotes.add(
          firstHanging,
          hanging == 1
              ? "a note never ends; it is held until its key is struck again or its track ends"
              : hanging
                  + " notes never end; they are held until their key is struck again or their track ends");
    }
    marks.sort(Comparator.comparingLong(Mark::tick));
  }

  List<SoundingNote> notes() {
    return notes;
  }

  List<TempoEvent> tempos() {
    return tempos;
  }

  List<MeterEvent> meters() {
    return meters;
  }

  List<Mark> marks() {
    return marks;
  }

  /** Where a pedal goes down, each tick once, in order. */
  List<Long> pedalTicks() {
    return List.copyOf(pedalTicks);
  }

  String trackName(int track) {
    return trackNames.getOrDefault(track, "");
  }

  String instrumentName(int track) {
    return instrumentNames.getOrDefault(track, "");
  }

  /** The first program of a channel, in its own track or else in any, as an instrument's name. */
  String instrument(TrackChannel line) {
    Integer own = programs.get(line);
    Integer program = own == null ? programOfChannel.get(line.channel()) : own;
    return program == null ? "" : GeneralMidi.instrument(program);
  }
}
