package org.barsheet.timing;

import java.util.OptionalInt;
import org.barsheet.align.places.Candidate;
import org.barsheet.cues.MusicRuler;
import org.barsheet.input.Prose;
import org.barsheet.plan.Length;
import org.barsheet.plan.Place.OfMotif;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** What a panel asked for and did not get. */
final class AskedFindings {

  /** A shot of fewer frames is hardly seen (common practice, no source). */
  private static final int FEWEST_FRAMES = 12;

  /** A length away from the one asked by more than this share is told. */
  private static final double FAR_FROM_ASKED = 0.25;

  /**
   * A length that got more than so many times what was asked, or less than its part, is a warning.
   */
  private static final double MANY_TIMES = 2;

  /**
   * A return more bars away from the bar it was to be near is hardly the one meant (our choice).
   */
  private static final int NEAR_BARS = 4;

  private final Shot shot;
  private final Findings findings;

  private AskedFindings(Shot shot, Findings findings) {
    this.shot = shot;
    this.findings = findings;
  }

  static void add(Shot shot, MusicRuler ruler, Candidate place, Findings findings) {
    AskedFindings asked = new AskedFindings(shot, findings);
    asked.addTooShort();
    asked.addFarFromBar();
    shot.panel()
        .length()
        .filter(length -> !length.isRange())
        .ifPresent(length -> asked.addFarFromLength(length, wanted(length, ruler, place)));
  }

  private static double wanted(Length asked, MusicRuler ruler, Candidate place) {
    long end = ruler.frameAfter(place.cutAt(), asked.unit(), asked.most());
    return Math.max(1, end - place.cut());
  }

  private void addTooShort() {
    long frames = shot.frames().length();
    if (frames < FEWEST_FRAMES) {
      String sentence = "lasts " + Prose.count(frames, "frame");
      String remedy = "viewers hardly see a shot under 12 frames: move a neighbor";
      findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, sentence, remedy);
    }
  }

  private void addFarFromBar() {
    OptionalInt near =
        shot.panel().cue() instanceof OfMotif motif ? motif.nearBar() : OptionalInt.empty();
    int got = shot.cue().place().bar();
    if (near.isPresent() && Math.abs(got - near.getAsInt()) > NEAR_BARS) {
      int away = Math.abs(got - near.getAsInt());
      String sentence =
          "asks for "
              + shot.panel().cue()
              + "; the nearest is in bar "
              + got
              + ", "
              + away
              + " bars away";
      String remedy =
          "check the bar; find --why \"bar " + near.getAsInt() + "\" shows what is heard there";
      findings.add(Severity.WARNING, Concerns.DIRECTOR, shot, sentence, remedy);
    }
  }

  private void addFarFromLength(Length asked, double wanted) {
    double share = shot.frames().length() / wanted;
    if (Math.abs(share - 1) > FAR_FROM_ASKED) {
      boolean far = share > MANY_TIMES || share < 1 / MANY_TIMES;
      String sentence = "gets " + shot.got() + "; you asked for " + asked;
      String remedy = "move a neighbor, or accept it";
      findings.add(
          far ? Severity.WARNING : Severity.REMARK, Concerns.DIRECTOR, shot, sentence, remedy);
    }
  }
}
