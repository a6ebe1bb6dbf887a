package org.barsheet.adoption;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.changes.LaidFilm;
import org.barsheet.changes.LaidFilm.LaidCue;
import org.barsheet.clock.Timecode;
import org.barsheet.motif.Form;
import org.barsheet.plan.Place;
import org.barsheet.plan.Place.AtBar;
import org.barsheet.plan.Place.OfMotif;
import org.barsheet.plan.Played;
import org.barsheet.revision.HeldBar;
import org.barsheet.revision.HeldPart;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.Revision;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.score.BarBeat;

/** The music as the earlier run heard it, and what a plan's places meant in it. */
final class OldMusic {

  /** Beats are kept to three decimals; no note of a score lies on a finer share of a beat. */
  private static final int MOST_DENOMINATOR = 96;

  private final LaidFilm film;
  private final ScoreNotes notes;

  OldMusic(LaidFilm film, ScoreNotes notes) {
    this.film = film;
    this.notes = notes;
  }

  ScoreNotes notes() {
    return notes;
  }

  /** Returns of all motifs with their notes, in order of time. */
  List<LaidCue> returns() {
    return film.cues().stream().filter(cue -> cue.held().isPresent()).toList();
  }

  /** The return that a place with a number or a bar names. */
  Optional<LaidCue> returnAt(OfMotif place) {
    List<LaidCue> counted =
        returns().stream()
            .filter(cue -> cue.name().equals(place.motif()) && cue.number() > 0)
            .toList();
    if (place.number().isPresent()) {
      return counted.stream().filter(cue -> cue.number() == place.number().getAsInt()).findFirst();
    }
    List<HeldBar> bars =
        notes.bars().stream().filter(bar -> bar.number() == place.nearBar().orElseThrow()).toList();
    return counted.stream()
        .filter(cue -> isSo(cue, place.played()))
        .min(Comparator.comparingLong(cue -> distance(cue, bars)));
  }

  private static boolean isSo(LaidCue cue, Played asked) {
    List<String> forms = Arrays.asList(cue.form().split(", ", -1));
    List<String> parts = cue.held().orElseThrow().parts();
    return asked.forms().stream().map(Form::word).allMatch(forms::contains)
        && asked.part().stream()
            .allMatch(part -> parts.stream().anyMatch(own -> isSame(own, part)));
  }

  /** What a part is called in the new version; the plan's own word where that is still good. */
  String partNow(String part, Revision revision) {
    return notes.parts().stream()
        .map(HeldPart::name)
        .filter(name -> isSame(name, part))
        .map(revision::partNow)
        .filter(name -> !isSame(name, part))
        .findFirst()
        .orElse(part);
  }

  /** Whether two names of parts or marks are one to whoever reads them. */
  static boolean isSame(String one, String other) {
    return plain(one).equals(plain(other));
  }

  private static String plain(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private static long distance(LaidCue cue, List<HeldBar> bars) {
    long start = start(cue.held().orElseThrow());
    return bars.stream()
        .mapToLong(bar -> Math.abs(bar.start() - start))
        .min()
        .orElse(Long.MAX_VALUE);
  }

  private static long start(HeldReturn held) {
    return held.notes().isEmpty() ? 0 : held.notes().get(0).at();
  }

  /** When a return begins, in quarter notes from tick 0. */
  static BigFraction quartersOf(HeldReturn held) {
    return BigFraction.of(start(held), ScoreNotes.UNITS);
  }

  /** The bar and beat that a place names; nothing where no bar or more than one may be meant. */
  Optional<BarBeat> barBeat(AtBar place) {
    List<HeldBar> bars =
        notes.bars().stream()
            .filter(bar -> bar.number() == place.bar())
            .filter(bar -> place.time().isEmpty() || place.time().getAsInt() == bar.time())
            .toList();
    return bars.size() == 1
        ? Optional.of(new BarBeat(place.bar(), bars.get(0).time(), place.beat()))
        : Optional.empty();
  }

  /**
   * Where a mark stood, in quarter notes from tick 0; nothing where none or several had its name.
   */
  Optional<BigFraction> markAt(String name) {
    List<LaidCue> marks =
        film.cues().stream()
            .filter(cue -> cue.kind().equals("mark") && isSame(cue.name(), name))
            .toList();
    return marks.size() == 1 ? quartersOf(marks.get(0)) : Optional.empty();
  }

  private Optional<BigFraction> quartersOf(LaidCue cue) {
    BigFraction beat = BigFraction.from(cue.beat().doubleValue(), MOST_DENOMINATOR);
    int bar = notes.bars().size() - 1;
    while (bar >= 0 && !isOf(cue, bar)) {
      bar--;
    }
    return bar < 0
        ? Optional.empty()
        : notes.quartersOf(new BarBeat(cue.bar(), notes.bars().get(bar).time(), beat));
  }

  private boolean isOf(LaidCue cue, int bar) {
    boolean framed = film.bars().size() == notes.bars().size();
    return notes.bars().get(bar).number() == cue.bar()
        && (!framed || film.bars().get(bar).startFrame() <= cue.frame());
  }

  /** The bar that a place means, where its words do not say it; else "". */
  String barOf(Place place) {
    Optional<BigFraction> quarters = Optional.empty();
    if (place instanceof OfMotif motif && !motif.isAny()) {
      quarters = returnAt(motif).map(cue -> quartersOf(cue.held().orElseThrow()));
    } else if (place instanceof Place.AtMark mark) {
      quarters = markAt(mark.name());
    }
    return quarters.map(at -> notes.placeAt(at).toString()).orElse("");
  }

  /** The label of a film frame as a frame. */
  long frameOf(Timecode timecode) {
    return timecode.framesSince(film.firstFrame());
  }

  /** The first frame of a panel's shot. */
  Optional<Long> startOf(String panel) {
    return film.shots().stream()
        .filter(shot -> shot.panel().equals(panel))
        .findFirst()
        .map(shot -> shot.frames().start());
  }

  /**
   * What sounded on a film frame, in quarter notes from tick 0: the beat that falls on it, else in
   * proportion between the bars around it. Bars run on beyond the first and the last.
   */
  BigFraction quartersAt(long frame) {
    List<LaidFilm.LaidBar> bars = film.bars();
    int bar = bars.size() - 1;
    while (bar > 0 && bars.get(bar).startFrame() > frame) {
      bar--;
    }
    HeldBar held = notes.bars().get(bar);
    BigFraction perFrame = perFrame(bar);
    long into = frame - bars.get(bar).startFrame();
    for (long beat : held.beats()) {
      BigFraction frames = BigFraction.of(beat - held.start()).divide(perFrame);
      if (Math.abs(frames.doubleValue() - into) <= 0.5) {
        return BigFraction.of(beat, ScoreNotes.UNITS);
      }
    }
    return perFrame.multiply(into).add(held.start()).divide(ScoreNotes.UNITS);
  }

  /** How many units of a bar go by in a frame. */
  private BigFraction perFrame(int bar) {
    List<LaidFilm.LaidBar> bars = film.bars();
    int measured = bar + 1 < bars.size() ? bar : Math.max(0, bar - 1);
    boolean one = bars.size() == 1;
    long frames =
        one
            ? film.lengthFrames()
            : bars.get(measured + 1).startFrame() - bars.get(measured).startFrame();
    return BigFraction.of(notes.bars().get(measured).length(), Math.max(1, frames));
  }
}
