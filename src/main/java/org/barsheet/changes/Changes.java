package org.barsheet.changes;

import java.util.List;
import java.util.Optional;
import org.barsheet.changes.PhotographChange.Use;
import org.barsheet.clock.FrameRate;
import org.barsheet.revision.Revision;
import org.barsheet.timing.Finding;
import org.barsheet.timing.PanelChange;

/**
 * What moved between two runs, and which photographs still serve.
 *
 * @param otherMusic what stands on other music than the same words meant before
 * @param rates the two frame rates where they differ: then no frame can be compared
 * @param bars runs of bars by how much later they begin; none where the rates differ
 * @param cues returns and marks that are new, gone, elsewhere or numbered anew
 * @param panels panels that do not lie as they did; none where the rates differ
 * @param seen performers who are not seen as they were; none where the rates differ
 * @param photographs every photograph of both runs
 * @param identities which thing of the earlier run is which
 */
public record Changes(
    OtherMusic otherMusic,
    Optional<RateChange> rates,
    List<BarShift> bars,
    List<CueChange> cues,
    List<PanelChange> panels,
    List<SeenChange> seen,
    List<PhotographChange> photographs,
    Identities identities) {

  public Changes {
    bars = List.copyOf(bars);
    cues = List.copyOf(cues);
    panels = List.copyOf(panels);
    seen = List.copyOf(seen);
    photographs = List.copyOf(photographs);
  }

  /**
   * Two frame rates.
   *
   * @param before of the earlier run
   * @param now of the later one
   */
  public record RateChange(FrameRate before, FrameRate now) {}

  /** What lies between two runs. */
  public static Changes between(LaidFilm before, LaidFilm now) {
    Optional<Revision> revision =
        before.music().flatMap(was -> now.music().map(is -> Revision.between(was, is)));
    OtherMusic otherMusic = OtherMusic.between(before, now);
    List<CueChange> cues = CuePairing.all(before.cues(), now.cues(), revision);
    List<PhotographChange> photographs = PhotographChange.between(before.shots(), now.shots());
    Identities identities = new Identities(before, now, cues, photographs, revision);
    boolean sameRate = before.rate().equals(now.rate());
    return new Changes(
        otherMusic,
        sameRate ? Optional.empty() : Optional.of(new RateChange(before.rate(), now.rate())),
        sameRate ? BarShift.between(before.bars(), now.bars(), revision) : List.of(),
        cues.stream().filter(change -> !change.isAsBefore()).toList(),
        sameRate
            ? PanelChange.between(identities.underNamesOfNow(before.panels()), now.panels())
            : List.of(),
        sameRate ? SeenChange.between(before, now) : List.of(),
        photographs,
        identities);
  }

  /** Whether everything lies and serves as it did. */
  public boolean isNone() {
    return otherMusic.findings().isEmpty()
        && rates.isEmpty()
        && bars.stream().allMatch(shift -> shift.frames() == 0)
        && cues.isEmpty()
        && panels.isEmpty()
        && seen.isEmpty()
        && count(Use.STILL_SERVES) == photographs.size();
  }

  /** How many photographs are to be used in a way. */
  public long count(Use use) {
    return photographs.stream().filter(photograph -> photograph.use() == use).count();
  }

  /** What everybody must be told. */
  public List<Told> told() {
    return Told.of(this);
  }

  /** The changes in sentences without closing full stops, the largest first. */
  public List<String> sentences() {
    return together(List.of(ofMusicAndCues(), PanelChange.sentences(panels)));
  }

  /** The same sentences with panels before bars and cues, for whoever reads the first of many. */
  public List<String> panelsFirst() {
    return together(
        List.of(
            ofMusic(),
            ofRate(),
            PanelChange.sentences(panels),
            BarShift.sentences(bars),
            ofCues()));
  }

  /** The sentences about music, bars and cues. */
  List<String> ofMusicAndCues() {
    return together(List.of(ofMusic(), ofRate(), BarShift.sentences(bars), ofCues()));
  }

  private static List<String> together(List<List<String>> sentences) {
    return sentences.stream().flatMap(List::stream).toList();
  }

  private List<String> ofMusic() {
    return otherMusic.findings().stream().map(Finding::inFull).toList();
  }

  private List<String> ofRate() {
    return rates.stream()
        .map(
            change ->
                "the film now runs at "
                    + change.now()
                    + " fps, not "
                    + change.before()
                    + ": every frame number is new")
        .toList();
  }

  private List<String> ofCues() {
    return cues.stream().map(CueChange::sentence).toList();
  }

  /** Everything that moved and every photograph, a line each. */
  public List<ChangeLine> lines() {
    return ChangeLines.of(this);
  }
}
