package org.barsheet.workbook;

import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.Cue;
import org.barsheet.cues.FilmBar;
import org.barsheet.plan.Film;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoAdvice;
import org.barsheet.timing.FilmPin;
import org.barsheet.timing.PinShift;
import org.barsheet.timing.TempoReport;
import org.barsheet.timing.TempoSection;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.SheetWords;

/** What the film's sheet says of tempo: whom it follows, sections, advice, pins. */
final class FilmTempo {

  private static final int DOWNBEATS = 3;

  private final Film film;
  private final Music music;
  private final List<FilmBar> bars;
  private final TempoReport tempo;
  private final FilmSections page;

  private FilmTempo(
      Film film, Music music, List<FilmBar> bars, TempoReport tempo, FilmSections page) {
    this.film = film;
    this.music = music;
    this.bars = bars;
    this.tempo = tempo;
    this.page = page;
  }

  static FilmTempo of(Book book, FilmSections page) {
    var timing = book.film().timing();
    return new FilmTempo(timing.plan().film(), timing.music(), timing.bars(), timing.tempo(), page);
  }

  void write() {
    page.paragraph("", SheetWords.sentence(music.sentence()));
    if (!music.sentence().contains(music.evidence().sentence())) {
      page.paragraph("", SheetWords.sentence(music.evidence().sentence()));
    }
    page.paragraph("", "Check by ear that these are the first downbeats:");
    bars.stream().filter(bar -> bar.bar().number() > 0).limit(DOWNBEATS).forEach(this::downbeat);
    sections();
    pins();
  }

  private void downbeat(FilmBar bar) {
    page.line(
        "bar " + bar.bar().number(),
        film.timecode(bar.startFrame()).toString(),
        "",
        bar.bar().meter()
            + ", "
            + bar.framesPerBeat()
            + " frames per beat, "
            + SheetWords.plain(bar.beatsPerMinute().doubleValue())
            + " bpm");
    page.linkToFrame(bar.startFrame());
  }

  private void sections() {
    if (!tempo.sections().isEmpty()) {
      page.paragraph(
          "",
          "Sections, each with its average tempo, and how many of its bar lines fall where a new"
              + " photograph can begin ("
              + SheetWords.shown(film.framesPerPhotograph())
              + ", counted from its first bar):");
      tempo.sections().forEach(this::section);
    }
  }

  private void section(TempoSection section) {
    if (section.first().equals(section.last())) {
      singleBar(section);
      return;
    }
    page.line(
        "bars " + section.first().bar().number() + "-" + section.last().bar().number(),
        SheetWords.plain(section.beatsPerMinute().doubleValue()) + " bpm",
        section.framesPerBeat().toString(),
        name(section)
            + "drift at most "
            + seconds(section.mostDrift())
            + "; "
            + section.barsOnPhotographs()
            + " of "
            + SheetWords.count(section.bars(), "bar line")
            + (section.barsOnPhotographs() == 1 ? " falls" : " fall")
            + " on photographs"
            + advice(section));
  }

  /** In a single bar no tempo can be kept or lost. */
  private void singleBar(TempoSection section) {
    page.line(
        "bar " + section.first().bar().number(),
        SheetWords.plain(section.beatsPerMinute().doubleValue()) + " bpm",
        section.framesPerBeat().toString(),
        name(section)
            + (section.first().bar().number() == 0 ? "pickup, " : "")
            + "one bar of "
            + section.first().bar().meter());
  }

  private static String name(TempoSection section) {
    return section.name().isEmpty() ? "" : section.name() + ": ";
  }

  private static String advice(TempoSection section) {
    String better =
        section.better().stream().map(FilmTempo::advice).collect(Collectors.joining(", "));
    return better.isEmpty() ? "" : "; more would at " + better;
  }

  private static String advice(TempoAdvice advice) {
    return SheetWords.plain(new Seconds(advice.beatsPerMinute()).toDecimal(3).doubleValue())
        + " bpm ("
        + advice.tempo()
        + "): "
        + advice.barsOnGrid();
  }

  private void pins() {
    if (!tempo.pins().isEmpty()) {
      page.paragraph(
          "",
          "Bars pinned to the recording, and how far the bar and its film frame are from the pin:");
      tempo.pins().forEach(this::pin);
    }
    if (!tempo.shifts().isEmpty()) {
      page.paragraph("", "How far the pins move each cue from the written tempo:");
      tempo.shifts().forEach(this::shift);
    }
  }

  private void pin(FilmPin pin) {
    page.line(
        "bar " + pin.bar().bar().number(),
        film.timecode(pin.frame()).toString(),
        "",
        "pinned at "
            + seconds(pin.asked())
            + "; the bar is "
            + off(pin.residual())
            + ", its frame "
            + off(pin.frameResidual()));
    page.linkToFrame(pin.frame());
  }

  private static String off(Seconds residual) {
    if (residual.signum() == 0) {
      return "exactly on it";
    }
    return residual.signum() > 0
        ? seconds(residual) + " later"
        : seconds(Seconds.ZERO.minus(residual)) + " earlier";
  }

  private void shift(PinShift shift) {
    long frames = shift.frames();
    String moved =
        frames == 0
            ? "as written"
            : SheetWords.count(Math.abs(frames), "frame") + (frames > 0 ? " later" : " earlier");
    page.line(
        "", film.timecode(shift.cue().frame()).toString(), "", title(shift.cue()) + ": " + moved);
    page.linkToFrame(shift.cue().frame());
  }

  private static String title(Cue cue) {
    String place = cue.place().toString();
    return cue.title().equals(place) ? place : cue.title() + " (" + place + ")";
  }

  private static String seconds(Seconds time) {
    return time.toDecimal(3).toPlainString() + " s";
  }
}
