package org.barsheet.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.film.FilmSheet;
import org.barsheet.motif.Occurrence;
import org.barsheet.score.GeneralMidi;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** The music on the film: bars, parts, notes, motifs and cues. */
final class MusicData {

  /** Parts of a second in which times of sound are counted. */
  private static final int UNITS_A_SECOND = 100_000;

  private final TimingSheet timing;
  private final Score score;
  private final PageJson json;
  private final Map<Long, Long> times = new HashMap<>();
  private final Map<String, Integer> motifs = new HashMap<>();
  private final Map<String, Integer> shotOfCue = new HashMap<>();

  MusicData(FilmSheet sheet, PageJson json) {
    this.timing = sheet.timing();
    this.score = timing.music().score();
    this.json = json;
    timing.tallies().forEach(tally -> motifs.put(tally.motif(), motifs.size()));
    for (Shot shot : timing.shots()) {
      shotOfCue.putIfAbsent(shot.cue().id(), shot.index());
    }
  }

  void write() {
    json.text("tempo", timing.music().sentence());
    json.objects("bars", timing.bars(), this::bar);
    json.objects("parts", score.parts(), this::part);
    json.list("notes", this::notes);
    json.objects(
        "motifs",
        timing.tallies(),
        tally -> json.text("name", tally.motif()).text("sign", tally.sign()));
    json.objects("cues", timing.cues(), this::cue);
  }

  /** Film time of a tick; many notes begin and end together. */
  private long timeOf(long tick) {
    return times.computeIfAbsent(tick, this::measured);
  }

  private long measured(long tick) {
    return units(timing.clock().filmTime(timing.music().tempo().secondsAt(tick)));
  }

  /** A time in the units of sound. */
  static long units(Seconds time) {
    BigFraction units = time.value().multiply(UNITS_A_SECOND);
    return Math.round(units.doubleValue());
  }

  private long frameOf(long tick) {
    return timing.clock().frameAt(timing.music().tempo().secondsAt(tick));
  }

  /** A bar with the frames and the times of its beats. */
  private void bar(FilmBar bar) {
    List<Long> beats = bar.bar().beatTicks();
    json.number("number", bar.bar().number()).number("time", bar.bar().time());
    json.number("start", bar.startFrame()).number("frames", bar.lengthFrames());
    json.text("meter", bar.bar().meter().toString());
    json.text("framesPerBeat", bar.framesPerBeat().toString());
    json.text("bpm", bar.beatsPerMinute().stripTrailingZeros().toPlainString());
    json.yes("short", bar.bar().isShort());
    json.list("beats", beats, tick -> json.item(frameOf(tick)));
    json.list("clicks", beats, tick -> json.item(timeOf(tick)));
  }

  private void part(Part part) {
    json.text("name", part.name()).text("instrument", part.instrument());
    int program =
        GeneralMidi.programOf(part.instrument())
            .orElse(GeneralMidi.programOf(part.name()).orElse(0));
    json.number("program", program).yes("drums", part.drums());
  }

  /** Five numbers a note: time since the note before, length, part, pitch, velocity. */
  private void notes() {
    long before = 0;
    for (Note note : score.notes()) {
      long at = timeOf(note.onTick());
      json.item(at - before).item(timeOf(note.offTick()) - at);
      json.item(note.part()).item(note.pitch()).item(note.velocity());
      before = at;
    }
  }

  private void cue(Cue cue) {
    json.text("kind", PageWords.word(cue.kind())).text("title", cue.title());
    json.number("frame", cue.frame()).number("accent", cue.accentFrame());
    json.text("place", cue.isBeforeMusic() ? cue.title() : cue.place().toString());
    Integer shot = shotOfCue.get(cue.id());
    if (shot != null) {
      json.number("shot", shot);
    }
    json.maybe(cue.occurrence(), occurrence -> occurrence(cue, occurrence));
  }

  private void occurrence(Cue cue, Occurrence occurrence) {
    json.number("motif", motifs.getOrDefault(cue.name(), 0)).number("number", cue.number());
    json.number("end", frameOf(occurrence.notes().endTick()));
    json.text("form", occurrence.variation().description());
    json.text("certainty", PageWords.word(occurrence.certainty()));
    json.texts(
        "parts", occurrence.parts().stream().map(part -> score.parts().get(part).name()).toList());
    json.list("onsets", occurrence.notes().ticks(), tick -> json.item(timeOf(tick)));
    json.list("pitches", occurrence.notes().pitches(), pitch -> json.item(pitch));
  }
}
