package org.barsheet.pulse;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.PinnedTempo.PinnedBar;
import org.barsheet.pulse.PulseFinder.Kept;
import org.barsheet.pulse.PulseFinder.Pulse;
import org.barsheet.pulse.TempoEvidence.Verdict;
import org.barsheet.score.Bar;
import org.barsheet.score.BarGrid;
import org.barsheet.score.Division;
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
    return new MusicFinder(score, request).follow();
  }

  private Music follow() {
    boolean played =
        switch (request.tempo()) {
          case WRITTEN -> false;
          case PLAYED -> true;
          case AUTO -> saysNothing();
        };
    Optional<Pulse> pulse = played ? PulseFinder.find(score, request) : heardOtherwise();
    return pulse.map(this::followPlayed).orElseGet(() -> followWritten(played));
  }

  /** Other bars than the written ones where those are not to be believed. */
  private Optional<Pulse> heardOtherwise() {
    if (request.tempo() == TempoRequest.Mode.WRITTEN) {
      return Optional.empty();
    }
    WrittenCheck.Outcome outcome = WrittenCheck.of(score, request);
    outcome.doubts().forEach(doubts::add);
    return outcome.other();
  }

  /** Whether the written tempo tells nothing of the music, or counts no beats at all. */
  private boolean saysNothing() {
    return evidence.verdict() == Verdict.UNTRUE || score.division() instanceof Division.PerFrame;
  }

  private Music followWritten(boolean playedWanted) {
    boolean pickup = numbering.decidePickup(score.bars());
    BarGrid bars = numbering.number(numbering.feel(writtenBars()), pickup);
    List<PinnedBar> pins = PinnedTempo.locate(bars, request.pins());
    TempoMap tempo = pins.isEmpty() ? score.tempo() : PinnedTempo.bend(score.tempo(), pins);
    addWrittenDoubts(bars, tempo, playedWanted);
    List<TempoRequest.Pin> ordered = PinOrder.of(request.pins());
    addOddPins(
        ordered,
        pins.stream()
            .mapToDouble(pin -> score.tempo().secondsAt(pin.bar().startTick()).toDouble())
            .toArray(),
        PinOrder.ODD_IN_WRITTEN,
        bars);
    Music.Source source = pins.isEmpty() ? Music.Source.WRITTEN : Music.Source.PINNED;
    return new Music(score, tempo, bars, pickup, source, evidence, writtenSentence(pins), doubts);
  }

  /** The bars as written, but for free passages where the request leaves them open. */
  private BarGrid writtenBars() {
    return freePassagesFound()
        ? FreePassages.follow(score, score.bars(), evidence.weakStretches())
        : score.bars();
  }

  private boolean freePassagesFound() {
    return request.tempo() == TempoRequest.Mode.AUTO
        && evidence.verdict() == Verdict.MIXED
        && request.pins().isEmpty()
        && request.playedOrder().isEmpty()
        && request.feltBeat().isEmpty();
  }

  private void addWrittenDoubts(BarGrid bars, TempoMap tempo, boolean playedWanted) {
    String unheard =
        "no beats found in the playing (too few notes, or more than 30 minutes); the bars are as"
            + " written";
    if (evidence.verdict() == Verdict.UNTRUE) {
      String untrue = "the written tempo looks wrong: " + evidence.sentence();
      addOfAll(Doubt.Kind.UNTRUE_TEMPO, bars, untrue + (playedWanted ? "; " + unheard : ""));
    } else if (playedWanted) {
      addOfAll(Doubt.Kind.UNTRUE_TEMPO, bars, unheard);
    }
    Seconds start = tempo.secondsAt(bars.first().startTick());
    if (start.signum() < 0) {
      String early = Seconds.ZERO.minus(start).toDecimal(3).toPlainString();
      addOfAll(
          Doubt.Kind.BEFORE_RECORDING,
          bars,
          "with these pins the music begins " + early + " s before the recording does");
    }
    for (TempoEvidence.WeakStretch weak : evidence.weakStretches()) {
      if (evidence.verdict() == Verdict.MIXED) {
        addWeak(bars.barAt(weak.fromTick()), bars.barAt(weak.toTick() - 1));
      }
    }
  }

  private void addOddPins(
      List<TempoRequest.Pin> pins, double[] positions, double odd, BarGrid bars) {
    for (TempoRequest.Pin pin : PinOrder.atOdds(pins, positions, odd)) {
      addOfAll(
          Doubt.Kind.PIN_AT_ODDS,
          bars,
          "the pin of "
              + PinOrder.text(pin)
              + " contradicts its neighbors: without it the music runs evenly there");
    }
  }

  private void addOfAll(Doubt.Kind kind, BarGrid bars, String sentence) {
    doubts.add(new Doubt(kind, bars.first(), bars.last(), sentence));
  }

  private void addWeak(Bar from, Bar to) {
    doubts.add(
        new Doubt(
            Doubt.Kind.PARTLY_UNTRUE,
            from,
            to,
            "from bar "
                + from.number()
                + " to bar "
                + to.number()
                + " the notes leave the written beats; "
                + (freePassagesFound()
                    ? "bars there are taken from the playing where possible"
                    : "pin bars there if a landing depends on them")));
  }

  private String writtenSentence(List<PinnedBar> pins) {
    String pinned =
        pins.isEmpty()
            ? ""
            : ", fitted to " + pins.size() + (pins.size() == 1 ? " pinned bar" : " pinned bars");
    return "tempo and bars as written" + pinned + ": " + evidence.sentence();
  }

  private Music followPlayed(Pulse pulse) {
    boolean pickup = numbering.decidePickup(pulse.bars());
    BarGrid bars = numbering.numberPlayed(pulse.bars(), pickup, score.tempo());
    pulse.doubts().forEach(doubts::add);
    List<TempoRequest.Pin> pins = PinOrder.of(request.pins());
    double[] places = pins.stream().mapToDouble(TempoRequest.Pin::bar).toArray();
    addOddPins(pins, places, PinOrder.ODD_IN_PLAYING, bars);
    TempoEvidence heard = heard(pulse);
    Music music =
        new Music(score, score.tempo(), bars, pickup, Music.Source.PLAYED, heard, "", doubts);
    Music told = music.withSentence(playedSentence(pulse, music));
    return pulse.kept() != Kept.NOTHING
        ? told
        : told.withDoubt(
            new Doubt(Doubt.Kind.FOUND_BARS, bars.first(), bars.last(), confirm(music)));
  }

  /** What the notes say of the written beats, now that others are found. */
  private TempoEvidence heard(Pulse pulse) {
    return switch (pulse.kept()) {
      case NOTHING, CLEAR_BEATS -> evidence;
      case PULSE -> evidence.contradictedBy(60 / pulse.beatSeconds());
      case WRITTEN ->
          score.meterEvents() == 0
              ? evidence
              : evidence.saying("the notes lie beside the written beats");
    };
  }

  private String playedSentence(Pulse pulse, Music music) {
    BarGrid bars = music.bars();
    return String.format(
        Locale.ROOT,
        "%s: %d bars, mostly of %d %sbeats%s%s; %s",
        foundWords(pulse),
        bars.bars().size(),
        usualSize(bars),
        bars.last().meter().isCompound() ? "dotted " : "",
        bpm(pulse),
        music.firstDownbeats(1).stream()
            .map(beat -> ", bar " + beat.bar().number() + " at " + hundredths(beat.seconds()))
            .findFirst()
            .orElse(""),
        music.evidence().sentence());
  }

  private String foundWords(Pulse pulse) {
    return switch (pulse.kept()) {
      case NOTHING, CLEAR_BEATS -> "bars and beats found in the playing";
      case PULSE -> "bars and beats found in the notes";
      case WRITTEN ->
          score.meterEvents() == 0
              ? "tempo as written, bars found in the notes (the file has no time signature)"
              : "tempo and bars as written, but later, where the notes are";
    };
  }

  private static String bpm(Pulse pulse) {
    double beatsPerMinute = 60 / pulse.beatSeconds();
    return switch (pulse.kept()) {
      case NOTHING, CLEAR_BEATS ->
          String.format(Locale.ROOT, ", %.0f bpm in the middle", beatsPerMinute);
      case PULSE -> ", " + Question.bpm(beatsPerMinute) + " bpm";
      case WRITTEN -> "";
    };
  }

  private static String hundredths(Seconds seconds) {
    return seconds.toDecimal(2).toPlainString() + " s";
  }

  /** Felt beats of most bars. */
  static int usualSize(BarGrid bars) {
    Map<Integer, Integer> counts = new TreeMap<>();
    bars.bars().forEach(bar -> counts.merge(bar.beatTicks().size(), 1, Integer::sum));
    return counts.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElseThrow();
  }

  private static String confirm(Music music) {
    String times =
        music.firstDownbeats(3).stream()
            .map(beat -> hundredths(beat.seconds()))
            .collect(Collectors.joining(", "));
    return "bars are taken from the playing, not from the file: check that bars begin at " + times;
  }
}
