package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.pulse.PinnedTempo.PinnedBar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Score;
import org.barsheet.score.TempoMap;

/** Decides which tempo and which bars the film follows. */
public final class MusicFinder {

  private final Score score;
  private final TempoRequest request;
  private final TempoEvidence evidence;
  private final List<Doubt> doubts = new ArrayList<>();
  private final BarNumbering numbering;

  private MusicFinder(Score score, TempoRequest request) {
    this.score = score;
    this.request = request;
    this.evidence = TempoEvidence.of(score);
    this.numbering = new BarNumbering(score, request, doubts);
  }

  /**
   * Follows a score as asked.
   *
   * @throws org.barsheet.input.InputException if what is asked contradicts itself or the score:
   *     pins that clash, bars that do not exist, a played order of another length. Its problems
   *     name no file; their position is {@code pins}, {@code played-order} or {@code felt-beat}
   */
  public static Music follow(Score score, TempoRequest request) {
    return new MusicFinder(score, request).followWritten();
  }

  private Music followWritten() {
    boolean pickup = numbering.decidePickup(score.bars());
    BarGrid bars = numbering.number(numbering.feel(score.bars()), pickup);
    List<PinnedBar> pins = PinnedTempo.locate(bars, request.pins());
    TempoMap tempo = pins.isEmpty() ? score.tempo() : PinnedTempo.bend(score.tempo(), pins);
    if (evidence.verdict() == TempoEvidence.Verdict.UNTRUE) {
      doubts.add(
          new Doubt(
              Doubt.Kind.UNTRUE_TEMPO,
              bars.first(),
              bars.last(),
              "the written tempo looks untrue: " + evidence.sentence()));
    }
    Music.Source source = pins.isEmpty() ? Music.Source.WRITTEN : Music.Source.PINNED;
    return new Music(score, tempo, bars, pickup, source, evidence, writtenSentence(pins), doubts);
  }

  private String writtenSentence(List<PinnedBar> pins) {
    String pinned =
        pins.isEmpty()
            ? ""
            : ", bent to " + pins.size() + (pins.size() == 1 ? " pinned bar" : " pinned bars");
    return "tempo and bars as written" + pinned + ": " + evidence.sentence();
  }
}
