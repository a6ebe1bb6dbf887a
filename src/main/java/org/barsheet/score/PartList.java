package org.barsheet.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.barsheet.score.ScoreEvents.SoundingNote;
import org.barsheet.score.ScoreEvents.TrackChannel;

/** Makes parts of the channels and tracks that hold notes, and gives the notes to them. */
final class PartList {

  private static final Pattern TRAILING_COLON = Pattern.compile("[\\s:]+$");

  private final ScoreEvents events;
  private final TreeMap<TrackChannel, Part> parts = new TreeMap<>();
  private final TreeMap<String, Integer> usedNames = new TreeMap<>();

  private PartList(ScoreEvents events) {
    this.events = events;
  }

  static PartList of(ScoreEvents events) {
    PartList list = new PartList(events);
    Set<TrackChannel> sounding = new HashSet<>();
    events.notes().forEach(note -> sounding.add(line(note)));
    TreeSet<TrackChannel> lines = new TreeSet<>(sounding);
    TreeMap<Integer, Integer> linesOfTrack = new TreeMap<>();
    lines.forEach(line -> linesOfTrack.merge(line.track(), 1, Integer::sum));
    lines.forEach(line -> list.add(line, linesOfTrack.getOrDefault(line.track(), 0) == 1));
    return list;
  }

  private static TrackChannel line(SoundingNote note) {
    return new TrackChannel(note.track(), note.channel());
  }

  private void add(TrackChannel line, boolean aloneInTrack) {
    int channel = line.channel() + 1;
    boolean drums = channel == GeneralMidi.DRUM_CHANNEL;
    String instrument = drums ? "Drums" : events.instrument(line);
    int index = parts.size();
    String name = unique(name(line, aloneInTrack, instrument, index));
    parts.put(line, new Part(index, name, instrument, line.track(), channel, drums));
  }

  /** The track's own name where the track holds one part only, else the instrument. */
  private String name(TrackChannel line, boolean aloneInTrack, String instrument, int index) {
    List<String> names = new ArrayList<>();
    if (aloneInTrack) {
      names.add(withoutColon(events.trackName(line.track())));
      names.add(withoutColon(events.instrumentName(line.track())));
    }
    names.add(instrument);
    return names.stream().filter(name -> !name.isEmpty()).findFirst().orElse("part " + (index + 1));
  }

  /** Some engravers end the names of staves with a colon. */
  private static String withoutColon(String name) {
    return TRAILING_COLON.matcher(name).replaceFirst("");
  }

  private String unique(String name) {
    String candidate = name;
    while (usedNames.putIfAbsent(candidate, 1) != null) {
      candidate = name + " " + usedNames.merge(name, 1, Integer::sum);
    }
    return candidate;
  }

  List<Part> parts() {
    return List.copyOf(parts.values());
  }

  /** All notes with their parts, in order of onset, then part, then pitch. */
  List<Note> notes() {
    List<Note> notes = new ArrayList<>(events.notes().size());
    Map<TrackChannel, Part> partOf = new HashMap<>(parts);
    for (SoundingNote note : events.notes()) {
      int part = Objects.requireNonNull(partOf.get(line(note))).index();
      notes.add(new Note(part, note.pitch(), note.velocity(), note.onTick(), note.offTick()));
    }
    notes.sort(
        Comparator.comparingLong(Note::onTick)
            .thenComparingInt(Note::part)
            .thenComparingInt(Note::pitch));
    return notes;
  }
}
