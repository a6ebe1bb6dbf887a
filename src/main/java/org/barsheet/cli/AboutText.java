package org.barsheet.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.barsheet.clock.Seconds;
import org.barsheet.input.PlainText;
import org.barsheet.production.ScoreSummary;
import org.barsheet.production.ScoreSummary.BarAt;
import org.barsheet.production.ScoreSummary.MarkAt;
import org.barsheet.production.ScoreSummary.MeterFrom;
import org.barsheet.production.ScoreSummary.PartSize;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.TempoEvidence;
import org.barsheet.score.Division;
import org.barsheet.score.Meter;
import org.barsheet.score.Part;
import org.barsheet.score.ReadingNote;
import org.barsheet.score.Score;
import org.barsheet.suggestions.Suggestion;

/** A score's figures as text. */
final class AboutText {

  /** Letters of a part's name beside a line to copy, which is long itself. */
  private static final int LONGEST_PART = 40;

  private AboutText() {}

  static void print(ScoreSummary about, int figures, PrintWriter out) {
    Score score = about.music().score();
    out.println(about.file());
    out.println("  file     format " + score.format() + ", " + division(score.division()));
    out.println("  length   " + length(about));
    out.println("  tempo    " + tempo(about));
    out.println(
        "  meter    "
            + about.meters().stream().map(AboutText::meter).collect(Collectors.joining(", ")));
    out.println("  bars     " + bars(about));
    out.println("  followed " + about.music().sentence());
    about.music().doubts().forEach(doubt -> out.println("         ? " + doubt.sentence()));
    section(out, "Parts", parts(about));
    section(out, "Marks", marks(about));
    section(
        out,
        "Likely motifs (copy a line under motifs in your plan)",
        suggestions(about, figures, false));
    section(out, "Accompaniment and riffs", suggestions(about, figures, true));
    if (!score.readingNotes().isEmpty()) {
      out.println();
      out.println("Odd in this file");
      for (ReadingNote note : score.readingNotes()) {
        out.println("  byte " + note.byteOffset() + ": " + note.sentence());
      }
    }
    out.flush();
  }

  private static void section(PrintWriter out, String title, Table table) {
    if (!table.isEmpty()) {
      out.println();
      out.println(title);
      table.print(As.TEXT, out);
    }
  }

  private static String division(Division division) {
    if (division instanceof Division.PerFrame perFrame) {
      return Figures.count(perFrame.ticks(), "tick")
          + " a frame at "
          + perFrame.rate()
          + " fps (real time, no beats)";
    }
    return Figures.count(((Division.PerQuarter) division).ticks(), "tick") + " a quarter note";
  }

  private static String length(ScoreSummary about) {
    int notes = about.music().score().notes().size();
    if (notes == 0) {
      return "silent: the file holds no notes";
    }
    return Figures.duration(about.length())
        + ", "
        + Figures.count(notes, "note")
        + ", the first at "
        + Figures.duration(about.firstOnset());
  }

  private static String tempo(ScoreSummary about) {
    Music music = about.music();
    long start = music.bars().first().startTick();
    Seconds quarter = music.tempo().perQuarterAt(start);
    Meter meter = music.bars().first().meter();
    if (music.score().division() instanceof Division.PerFrame) {
      return "none in the file";
    }
    String events = Figures.count(music.score().tempoEvents(), "tempo event");
    return isFileFollowed(music)
        ? bpm(quarter.times(meter.feltBeatQuarters()))
            + " felt bpm at the start, "
            + noteOf(meter)
            + " each, "
            + events
        : bpm(quarter) + " bpm in the file, not followed, " + events;
  }

  /** Whether the beats that are followed are those of the file, though bars may begin elsewhere. */
  private static boolean isFileFollowed(Music music) {
    return music.source() != Music.Source.PLAYED
        || music.evidence().verdict() == TempoEvidence.Verdict.TRUE;
  }

  private static String bpm(Seconds beat) {
    return Figures.number(Seconds.of(60).dividedBy(beat), 3);
  }

  /** The note that a felt beat lasts: {@code a dotted quarter note}. */
  private static String noteOf(Meter meter) {
    int unit = meter.isCompound() ? meter.denominator() / 2 : meter.denominator();
    String name =
        switch (unit) {
          case 0 -> "double whole note";
          case 1 -> "whole note";
          case 2 -> "half note";
          case 4 -> "quarter note";
          case 8 -> "eighth note";
          case 16 -> "sixteenth note";
          default -> unit + "th note";
        };
    String article = name.startsWith("e") && !meter.isCompound() ? "an " : "a ";
    return article + (meter.isCompound() ? "dotted " : "") + name;
  }

  private static String meter(MeterFrom from) {
    return from.meter() + " from bar " + from.bar();
  }

  private static String bars(ScoreSummary about) {
    String downbeats =
        about.downbeats().stream().map(AboutText::downbeat).collect(Collectors.joining(", "));
    return Figures.count(about.music().bars().bars().size(), "bar")
        + (about.music().bars().first().number() == 0 ? " counting the pickup" : "")
        + (downbeats.isEmpty() ? "" : "; first downbeats: " + downbeats);
  }

  private static String downbeat(BarAt bar) {
    return "bar " + bar.bar().number() + " at " + bar.at().toDecimal(3) + " s";
  }

  /** A row a part. */
  static Table parts(ScoreSummary about) {
    Table table = new Table("part", "notes", "channel", "on the beats", "instrument");
    for (PartSize part : about.parts()) {
      table.add(
          part.part().name(),
          part.notes(),
          part.part().channel(),
          onTheBeats(about, part.part()),
          part.part().instrument());
    }
    return table;
  }

  /** "0.98" where 1 is every onset on the written grid; "" for a part of few notes. */
  private static String onTheBeats(ScoreSummary about, Part part) {
    return about.music().evidence().parts().stream()
        .filter(score -> score.part().equals(part))
        .map(score -> String.format(Locale.ROOT, "%.2f", score.score()))
        .findFirst()
        .orElse("");
  }

  private static Table marks(ScoreSummary about) {
    Table table = new Table("mark", "place", "seconds");
    for (MarkAt mark : about.marks()) {
      table.add(mark.mark().text(), mark.place().toString(), mark.at().toDecimal(3));
    }
    return table;
  }

  /** Of the first few suggestions those that accompany, or the others. */
  private static Table suggestions(ScoreSummary about, int figures, boolean accompany) {
    Table table = new Table("returns", "first in", "range", "bars", "line to copy");
    List<Suggestion> first = about.suggestions().stream().limit(figures).toList();
    for (int i = 0; i < first.size(); i++) {
      Suggestion one = first.get(i);
      if (one.accompanies() == accompany) {
        table.add(
            one.returns().size(),
            PlainText.shortened(about.music().score().parts().get(one.part()).name(), LONGEST_PART),
            one.range(),
            bars(about, one),
            "motif-" + (i + 1) + ": {notes: \"" + one.notes() + "\"}");
      }
    }
    return table;
  }

  /** The bars of its returns, the first eight of them. */
  private static String bars(ScoreSummary about, Suggestion suggestion) {
    String first =
        suggestion.returns().stream()
            .limit(8)
            .map(tick -> Integer.toString(about.music().bars().barAt(tick).number()))
            .collect(Collectors.joining(" "));
    return first + (suggestion.returns().size() > 8 ? " …" : "");
  }
}
