package org.barsheet.timing;

import java.util.List;
import org.barsheet.align.Layout;
import org.barsheet.align.places.AlignerInput;
import org.barsheet.align.places.Candidate;
import org.barsheet.cues.Cue;
import org.barsheet.cues.Cues;
import org.barsheet.input.Prose;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Plan;
import org.barsheet.plan.PlanNote;
import org.barsheet.plan.Reveal;
import org.barsheet.pulse.Doubt;
import org.barsheet.pulse.Music;
import org.barsheet.score.ReadingNote;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** What is doubtful about the music and the placing of the panels. */
final class TimingFindings {

  private final AlignerInput input;
  private final Layout layout;
  private final Findings findings = new Findings();

  private TimingFindings(AlignerInput input, Layout layout) {
    this.input = input;
    this.layout = layout;
  }

  /** All of them, worst first. */
  static List<Finding> of(
      Plan plan, Music music, AlignerInput input, List<Shot> shots, Layout layout) {
    TimingFindings findings = new TimingFindings(input, layout);
    music.doubts().forEach(findings::addDoubt);
    music.score().readingNotes().forEach(findings::addReadingNote);
    plan.text().notes().forEach(findings::addPlanNote);
    shots.forEach(findings::addPlacing);
    findings.findings.addAll(MotifFindings.of(plan, music, input.cues(), shots));
    return findings.findings.worstFirst();
  }

  private void addDoubt(Doubt doubt) {
    Severity severity =
        switch (doubt.kind()) {
          case UNTRUE_TEMPO, PARTLY_UNTRUE, FOUND_BARS, BEFORE_RECORDING, PIN_AT_ODDS ->
              Severity.WARNING;
          case BEAT_LEVEL, BAR_PHASE, BAR_SIZE -> Severity.WARNING;
          case PICKUP -> Severity.REMARK;
        };
    int from = doubt.from().number();
    int to = doubt.to().number();
    String place = from == to ? "bar " + from : "bars " + from + " to " + to;
    findings.add(severity, Concerns.DIRECTOR, place, doubt.sentence(), remedy(doubt.kind()));
  }

  private static String remedy(Doubt.Kind kind) {
    return switch (kind) {
      case UNTRUE_TEMPO ->
          "listen to the first bars; try music.tempo: played, or pin bars (music.pins)";
      case PARTLY_UNTRUE -> "listen to these bars; pin them (music.pins) where they are off";
      case FOUND_BARS -> "listen; pin any bar that is wrong (music.pins)";
      case BEAT_LEVEL -> "tap along";
      case BAR_PHASE, BAR_SIZE -> "count along";
      case PIN_AT_ODDS -> "correct its time or its bar number";
      case PICKUP -> "if it isn't one, write music.pickup: no";
      case BEFORE_RECORDING -> "check the pins, or let the recording begin earlier";
    };
  }

  private void addReadingNote(ReadingNote note) {
    String place = "byte " + note.byteOffset() + " of the score";
    if (note.musicLost()) {
      String remedy = "notes may be missing; export the score again";
      findings.add(Severity.WARNING, Concerns.COMPOSER, place, note.sentence(), remedy);
    } else {
      findings.add(Severity.REMARK, Concerns.COMPOSER, place, note.sentence(), "");
    }
  }

  private void addPlanNote(PlanNote note) {
    String place = (note.where().file() + ", " + note.where().position()).replaceAll(", $", "");
    findings.add(Severity.REMARK, Concerns.DIRECTOR, place, note.sentence(), "");
  }

  private void addPlacing(Shot shot) {
    Candidate place = layout.places().get(shot.index());
    if (!Cues.isCertain(shot.cue())) {
      addLikely(shot);
    }
    if (place.isLate()) {
      String sentence =
          "the cut comes "
              + Prose.count(place.cut() - place.wantedCut(), "frame")
              + " too late for its reveals";
      String remedy = "give panel " + shot.panel().name() + " more room before its accent";
      findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, sentence, remedy);
    }
    if (shot.index() == 0 && shot.cue().frame() > 0 && shot.cue().kind() != Cue.Kind.FREE) {
      String sentence =
          "asks for " + shot.cue().title() + "; the film's first shot begins at frame 0 anyway";
      String remedy = "put a panel before it, or drop its cue";
      findings.add(Severity.REMARK, Concerns.DIRECTOR, shot, sentence, remedy);
    }
    if (shot.panel().locked() && input.lockOf(shot.panel()).isEmpty()) {
      String sentence = "locked, but no earlier sheets hold its frames";
      String remedy =
          "make keeps it where it is now; if its sheets are elsewhere, name that folder with --out";
      findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, sentence, remedy);
    }
    addMovedUnderLock(shot);
    for (Reveal reveal : shot.panel().reveals()) {
      boolean known = !input.kept().runsOf(shot.panel(), reveal).isEmpty();
      if (reveal.photographed() && !known) {
        String sentence =
            reveal.opening() + " is photographed, but no earlier sheets hold its frames";
        String remedy =
            "make keeps it where it is now; if its sheets are elsewhere, name that folder with --out";
        findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, sentence, remedy);
      }
    }
    AskedFindings.add(shot, input.ruler(), place, findings);
  }

  /** A locked panel that would begin on its cue, and whose cue does not lie where it begins. */
  private void addMovedUnderLock(Shot shot) {
    boolean onCue =
        shot.panel().cut() instanceof Panel.OnCue
            || (shot.panel().cut() instanceof Panel.AutoCut && shot.panel().reveals().isEmpty());
    long later = shot.cue().frame() - shot.frames().start();
    boolean locked = layout.places().get(shot.index()).kind() == Candidate.Kind.LOCKED;
    if (onCue && locked && later != 0 && shot.cue().kind() != Cue.Kind.FREE) {
      String sentence =
          "is locked, but "
              + shot.cue().title()
              + " is "
              + Prose.count(Math.abs(later), "frame")
              + (later > 0 ? " after" : " before")
              + " its first frame";
      String remedy = "unlock it to follow the music, or leave it";
      findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, sentence, remedy);
    }
  }

  private void addLikely(Shot shot) {
    String what =
        shot.cue().occurrence().map(occurrence -> occurrence.variation().description()).orElse("");
    String sentence =
        shot.cue().title() + " is only likely" + (what.isEmpty() ? "" : " (" + what + ")");
    String remedy = "listen there; if it isn't one, name another place";
    findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, shot.cue(), sentence, remedy);
  }
}
