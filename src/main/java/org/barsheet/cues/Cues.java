package org.barsheet.cues;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Occurrence;
import org.barsheet.pulse.Music;
import org.barsheet.score.BarBeat;
import org.barsheet.score.Mark;

/** The moments of the music that panels can sit on, and how new ones are made. */
public final class Cues {

  private static final Comparator<Cue> IN_TIME =
      Comparator.comparing(Cue::at).thenComparing(Cue::id);

  private final MusicRuler ruler;
  private final List<Cue> occurrences;
  private final Map<String, List<Cue>> counted;
  private final List<Cue> marks;

  public Cues(Music music, MusicRuler ruler, List<Occurrence> found) {
    this.ruler = ruler;
    this.occurrences = ofOccurrences(found);
    this.counted =
        occurrences.stream()
            .filter(cue -> cue.number() > 0)
            .collect(Collectors.groupingBy(Cue::name, Collectors.toUnmodifiableList()));
    this.marks = ofMarks(music.score().marks());
  }

  private List<Cue> ofOccurrences(List<Occurrence> found) {
    Map<String, Integer> possible = new HashMap<>();
    List<Cue> cues = new ArrayList<>();
    for (Occurrence occurrence : found) {
      String id = word(occurrence.motif()) + "-";
      id +=
          occurrence.number() > 0
              ? occurrence.number()
              : "possible-" + possible.merge(occurrence.motif(), 1, Integer::sum);
      cues.add(ofOccurrence(id, occurrence));
    }
    cues.sort(IN_TIME);
    return List.copyOf(cues);
  }

  private Cue ofOccurrence(String id, Occurrence occurrence) {
    Seconds at = ruler.timeOf(occurrence.startTick());
    Seconds accent = ruler.timeOf(occurrence.notes().accentTick());
    return new Cue(
        id,
        Cue.Kind.RETURN,
        occurrence.motif(),
        occurrence.number(),
        at,
        ruler.frameAt(at),
        ruler.locate(ruler.timeOf(occurrence.notes().meantStart())),
        accent,
        ruler.frameAt(accent),
        ruler.locate(ruler.timeOf(occurrence.notes().meantAccent())),
        Optional.of(occurrence));
  }

  private List<Cue> ofMarks(List<Mark> found) {
    Map<String, Integer> seen = new HashMap<>();
    List<Cue> cues = new ArrayList<>();
    for (Mark mark : found) {
      String id = "mark-" + word(mark.text());
      int time = seen.merge(id, 1, Integer::sum);
      String unique = time == 1 ? id : id + "-" + time;
      cues.add(plain(unique, Cue.Kind.MARK, mark.text(), ruler.timeOf(mark.tick())));
    }
    return List.copyOf(cues);
  }

  /** Every return of every motif, in order of time. */
  List<Cue> occurrences() {
    return occurrences;
  }

  /** Returns of a motif that count (certain and likely ones), in order of time. */
  public List<Cue> counted(String motif) {
    return counted.getOrDefault(motif, List.of());
  }

  /** Every mark of the file, in order. */
  public List<Cue> marks() {
    return marks;
  }

  public Cue atBar(BarBeat place, Seconds at) {
    String id = "bar-" + place.bar();
    id += place.time() > 1 ? "-time-" + place.time() : "";
    id += place.isDownbeat() ? "" : "-beat-" + place.beatText();
    return plain(id, Cue.Kind.BAR, "", at);
  }

  Cue atTimecode(Timecode timecode, Seconds at) {
    String id = "at-" + timecode.toString().replace(':', '-').replace(';', '-');
    return plain(id, Cue.Kind.TIMECODE, "", at);
  }

  /** A place for a panel that asks for none; it is named after the panel once it has one. */
  public Cue free(Seconds at) {
    return plain("free", Cue.Kind.FREE, "", at);
  }

  /** The cue a panel has got, with its permanent name. */
  public static Cue named(Cue cue, String panel) {
    return cue.kind() != Cue.Kind.FREE
        ? cue
        : new Cue(
            "free-" + word(panel),
            cue.kind(),
            cue.name(),
            cue.number(),
            cue.at(),
            cue.frame(),
            cue.place(),
            cue.accentAt(),
            cue.accentFrame(),
            cue.accentPlace(),
            cue.occurrence());
  }

  /** A place measured from the start of the panel before. */
  public Cue intoPanel(String panel, Seconds at) {
    return plain("into-" + word(panel), Cue.Kind.INTO_PANEL, "", at);
  }

  private Cue plain(String id, Cue.Kind kind, String name, Seconds at) {
    long frame = ruler.frameAt(at);
    BarBeat place = ruler.locateFrame(frame);
    String called = name.isEmpty() && ruler.isBeforeMusic(frame) ? Cue.BEFORE_MUSIC : name;
    return new Cue(id, kind, called, 0, at, frame, place, at, frame, place, Optional.empty());
  }

  /** Occurrences and marks together with the cues that panels have got, in order of time. */
  public List<Cue> with(List<Cue> got) {
    List<Cue> all = new ArrayList<>(occurrences);
    all.addAll(marks);
    Set<String> ids = all.stream().map(Cue::id).collect(Collectors.toCollection(HashSet::new));
    got.stream().filter(cue -> ids.add(cue.id())).forEach(all::add);
    all.sort(IN_TIME);
    return List.copyOf(all);
  }

  public static boolean isCertain(Cue cue) {
    return cue.occurrence().map(o -> o.certainty() == Certainty.CERTAIN).orElse(true);
  }

  private static String word(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}.]+", "-");
  }
}
