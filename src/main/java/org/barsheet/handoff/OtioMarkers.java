package org.barsheet.handoff;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.barsheet.clock.FrameRate;
import org.barsheet.cues.Cue;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Finding;

/**
 * Markers of the timeline. Those of one track that fall on one frame are made into one, because
 * some programs keep only one.
 */
final class OtioMarkers {

  private static final String BETWEEN = " + ";

  private final FilmSheet sheet;
  private final FrameRate rate;
  private final CueShots shots;

  OtioMarkers(FilmSheet sheet) {
    this.sheet = sheet;
    this.rate = sheet.timing().clock().rate();
    this.shots = new CueShots(sheet);
  }

  private record Note(long frame, String name, String color, String comment) {}

  /** Every cue, for the track of the music. */
  JsonArray cues() {
    List<Note> notes = new ArrayList<>();
    for (Cue cue : sheet.timing().cues()) {
      String color = cue.kind() == Cue.Kind.RETURN ? "CYAN" : "BLUE";
      notes.add(new Note(cue.frame(), cue.title(), color, comment(cue)));
    }
    return merged(notes);
  }

  private String comment(Cue cue) {
    List<String> words = new ArrayList<>();
    CueWords.place(cue).ifPresent(words::add);
    cue.occurrence()
        .ifPresent(
            occurrence -> {
              words.add(occurrence.variation().description());
              words.add(CueWords.certainty(cue));
              words.add(String.join("; ", CueWords.parts(sheet, cue)));
            });
    CueWords.accent(sheet.plan().film(), cue).ifPresent(words::add);
    shots.panelsOn(cue).forEach(panel -> words.add("panel " + panel));
    return String.join(" · ", words);
  }

  /** The landing frame of every reveal of a layer. */
  JsonArray accents(int layer) {
    List<Note> notes = new ArrayList<>();
    for (PlannedReveal reveal : sheet.reveals()) {
      if (reveal.layer() == layer) {
        String comment = reveal.landing() + " · accent on frame " + reveal.accentFrame();
        notes.add(
            new Note(reveal.landsFrame(), reveal.opening().name() + " lands", "ORANGE", comment));
      }
    }
    return merged(notes);
  }

  /** Every finding that can be seen at a frame, for the track of the shots. */
  JsonArray findings() {
    List<Note> notes = new ArrayList<>();
    for (Finding finding : sheet.findings()) {
      if (finding.frame().isPresent()) {
        String remedy = finding.remedy().isEmpty() ? "" : " · " + finding.remedy();
        notes.add(
            new Note(
                finding.frame().getAsLong(),
                CueWords.word(finding.severity()),
                color(finding.severity()),
                finding.sentence() + remedy));
      }
    }
    return merged(notes);
  }

  /** One marker on a clip that nobody knows the place of, in the clip's own time. */
  JsonArray placeUnknown(String performer, JsonObject start) {
    JsonArray markers = new JsonArray();
    markers.add(
        Otio.marker(
            "place unknown",
            "RED",
            Otio.range(start, Otio.time(rate, 1)),
            performer + "'s clip isn't in sync here: find its place by hand"));
    return markers;
  }

  private static String color(Finding.Severity severity) {
    return switch (severity) {
      case ERROR -> "RED";
      case WARNING -> "YELLOW";
      case REMARK -> "WHITE";
    };
  }

  private JsonArray merged(List<Note> notes) {
    List<Note> inFilm =
        notes.stream()
            .filter(note -> note.frame() >= 0 && note.frame() < sheet.timing().lengthFrames())
            .sorted(Comparator.comparingLong(Note::frame))
            .toList();
    List<Note> merged = new ArrayList<>();
    for (Note note : inFilm) {
      int last = merged.size() - 1;
      if (last >= 0 && merged.get(last).frame() == note.frame()) {
        merged.set(last, both(merged.get(last), note));
      } else {
        merged.add(note);
      }
    }
    JsonArray markers = new JsonArray();
    merged.forEach(note -> markers.add(marker(note)));
    return markers;
  }

  private static Note both(Note one, Note other) {
    return new Note(
        one.frame(),
        one.name() + BETWEEN + other.name(),
        one.color(),
        one.comment() + BETWEEN + other.comment());
  }

  private JsonObject marker(Note note) {
    JsonObject range = Otio.range(Otio.time(rate, note.frame()), Otio.time(rate, 1));
    return Otio.marker(note.name(), note.color(), range, note.comment());
  }
}
