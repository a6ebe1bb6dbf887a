package org.barsheet.handoff;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.Appearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Performer;
import org.barsheet.received.ClipStarts;
import org.barsheet.received.ReceivedClip;
import org.barsheet.score.Note;
import org.barsheet.timing.SoundLayout;

/**
 * The performers' own sound: a track each, named by part, at its place, from a handle before the
 * part's first note to a handle after its last. Gains are left alone.
 */
final class OtioSound {

  private final FilmSheet sheet;
  private final FrameRate rate;

  OtioSound(FilmSheet sheet) {
    this.sheet = sheet;
    this.rate = sheet.timing().clock().rate();
  }

  /** Film times. */
  private record Span(Seconds from, Seconds until) {}

  /** One for each performer whose clip has come and sounds, in the plan's order. */
  List<JsonObject> tracks() {
    Map<String, ReceivedClip> best = new LinkedHashMap<>();
    for (ReceivedClip clip : sheet.clips()) {
      if (clip.facts().filter(ClipFacts::sounding).isPresent()) {
        best.merge(clip.performer().name(), clip, this::better);
      }
    }
    return best.values().stream().map(clip -> track(clip, clip.facts().orElseThrow())).toList();
  }

  /** Sound recorded apart is better than a video's, once it has a place. */
  private ReceivedClip better(ReceivedClip first, ReceivedClip second) {
    boolean placed = ClipStarts.of(second, sheet.timing()).best().isPresent();
    return placed && second.sound().isPresent() ? second : first;
  }

  private JsonObject track(ReceivedClip clip, ClipFacts facts) {
    Performer performer = clip.performer();
    String name = performer.part().isEmpty() ? performer.name() : performer.part();
    Optional<Seconds> start = ClipStarts.of(clip, sheet.timing()).best();
    JsonArray children = new JsonArray();
    JsonArray markers = new JsonArray();
    if (start.isPresent()) {
      lay(performer, facts, start.get(), children);
    } else {
      JsonObject first = Otio.range(Otio.time(rate, 0), Otio.time(rate, 1));
      String comment = performer.clip() + " isn't in this track: find its place by hand";
      markers.add(Otio.marker("place unknown", "RED", first, comment));
      children.add(Otio.gap(rate, sheet.timing().lengthFrames()));
    }
    return Otio.track(name, "Audio", children, markers);
  }

  /** On whole frames of the film; within the file to a sample. */
  private void lay(Performer performer, ClipFacts facts, Seconds start, JsonArray children) {
    Span wanted = wanted(performer);
    Seconds end = start.plus(facts.length());
    long first = firstFrame(later(later(wanted.from(), start), Seconds.ZERO));
    long last = rate.frameShowing(earlier(earlier(wanted.until(), end), filmEnd()));
    if (last <= first) {
      children.add(Otio.gap(rate, sheet.timing().lengthFrames()));
      return;
    }
    if (first > 0) {
      children.add(Otio.gap(rate, first));
    }
    long since = SoundLayout.samples(facts.sinceMidnight().orElse(Seconds.ZERO));
    long into = SoundLayout.samples(rate.startOf(first).minus(start));
    JsonObject available = Otio.range(samples(since), samples(SoundLayout.samples(facts.length())));
    JsonObject range = Otio.range(samples(since + into), Otio.time(rate, last - first));
    JsonObject media = OtioMedia.file(performer, available);
    children.add(Otio.clip(performer.name(), range, media));
    if (last < sheet.timing().lengthFrames()) {
      children.add(Otio.gap(rate, sheet.timing().lengthFrames() - last));
    }
  }

  /** The first film frame that begins no earlier. */
  private long firstFrame(Seconds inFilm) {
    long showing = rate.frameShowing(inFilm);
    return rate.startOf(showing).compareTo(inFilm) < 0 ? showing + 1 : showing;
  }

  private Seconds filmEnd() {
    return rate.startOf(sheet.timing().lengthFrames());
  }

  /** What the part needs; the whole film for who plays no part of the score. */
  private Span wanted(Performer performer) {
    List<Note> notes =
        sheet.timing().music().score().parts().stream()
            .filter(part -> part.name().equals(performer.part()))
            .findFirst()
            .map(sheet.timing().music().score()::notesOf)
            .orElse(List.of());
    if (notes.isEmpty()) {
      return new Span(Seconds.ZERO, filmEnd());
    }
    long on = notes.stream().mapToLong(Note::onTick).min().orElseThrow();
    long off = notes.stream().mapToLong(Note::offTick).max().orElseThrow();
    return new Span(filmTime(on).minus(Appearance.HANDLE), filmTime(off).plus(Appearance.HANDLE));
  }

  private Seconds filmTime(long tick) {
    return sheet.timing().clock().filmTime(sheet.timing().music().tempo().secondsAt(tick));
  }

  private static Seconds later(Seconds one, Seconds other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static Seconds earlier(Seconds one, Seconds other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  private static JsonObject samples(long count) {
    return Otio.time(SoundLayout.SAMPLE_RATE, count);
  }
}
