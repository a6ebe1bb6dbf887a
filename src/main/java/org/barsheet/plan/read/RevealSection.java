package org.barsheet.plan.read;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Place;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Slow;
import org.barsheet.plan.TextCursor;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.source.PlanKeys;

/** Reads the reveals of a panel. */
final class RevealSection {

  /** Photographs of one movement; nobody photographs more. */
  private static final int MOST_PHOTOGRAPHS = 9999;

  private static final WordChoice<Reveal.Lands> LANDS =
      WordChoice.of(Arrays.asList(Reveal.Lands.values()), Reveal.Lands::words);

  private final FilmSection film;
  private final int framesPerPhotograph;
  private final List<Opening> openings;
  private final Known known;

  RevealSection(FilmSection film, int framesPerPhotograph, List<Opening> openings, Known known) {
    this.film = film;
    this.framesPerPhotograph = framesPerPhotograph;
    this.openings = openings;
    this.known = known;
  }

  List<Reveal> read(PlanSection panel, Place cue, Set<String> panelsSoFar) {
    return panel.sections("reveals", "reveal", PlanKeys.REVEAL).stream()
        .map(section -> reveal(section, panel, cue, panelsSoFar))
        .toList();
  }

  private Reveal reveal(
      PlanSection section, PlanSection panel, Place cue, Set<String> panelsSoFar) {
    String opening = known.opening(section);
    checkCurve(section, opening);
    Reveal.LandsOn landsOn = section.read("lands-on", new Reveal.OnAccent(), this::landsOn);
    checkLandsOn(section, panel, cue, landsOn);
    if (landsOn instanceof Reveal.OnPlace on) {
      known.checkMotif(section, "lands-on", on.place());
      PanelSection.checkIntoPanel(section, "lands-on", on.place(), panelsSoFar);
    }
    int photographs = photographs(section, opening);
    return new Reveal(
        opening,
        section.read("moves", Reveal.Way.OPENS, WordChoice.of(Reveal.Way.values())),
        photographs,
        section.read("shown", framesPerPhotograph, WordChoice.SHOWN),
        section.read("slow", Slow.NONE, PanelSection.SLOW),
        section.read("even-in", Reveal.EvenIn.ANGLE, WordChoice.of(Reveal.EvenIn.values())),
        section.read("lands", Reveal.Lands.FULLY_OPEN, LANDS),
        landsOn,
        section.read("cycle", text -> cycle(text, photographs)),
        section.read("photographed", false, WordChoice.YES_OR_NO)
            ? Reveal.Taken.BY_PLAN
            : Reveal.Taken.NOT_YET,
        section.where());
  }

  private Reveal.LandsOn landsOn(String text) {
    TextCursor cursor = new TextCursor(text);
    if (cursor.takeWord("accent") && cursor.atEnd()) {
      return new Reveal.OnAccent();
    }
    if (cursor.takeWord("notes") && cursor.atEnd()) {
      return new Reveal.OnNotes();
    }
    return new Reveal.OnPlace(film.place(text));
  }

  private static void checkLandsOn(
      PlanSection section, PlanSection panel, Place cue, Reveal.LandsOn landsOn) {
    if (panel.has("cue") && !panel.isRead("cue")) {
      return;
    }
    // A timecode counts as anywhere as long as the film's rate is not known.
    boolean none = cue instanceof Place.Anywhere && panel.entry("cue").isEmpty();
    if (landsOn instanceof Reveal.OnAccent && none) {
      section.problem(
          "lands-on",
          section.title() + " lands on its panel's accent, but the panel has no cue",
          "give the panel a cue, or the reveal a place: lands-on: bar 12");
    }
    if (landsOn instanceof Reveal.OnNotes && !(cue instanceof Place.OfMotif)) {
      section.problem(
          "lands-on",
          section.title() + " follows notes, but its panel's cue is not a motif",
          "give the panel a motif as its cue, or write lands-on: accent");
    }
  }

  /** Free values are a curve of their own. */
  private void checkCurve(PlanSection section, String opening) {
    boolean isFree =
        openings.stream()
            .anyMatch(o -> o.name().equals(opening) && o.motion() instanceof Opening.Values);
    for (String key : List.of("slow", "even-in")) {
      if (isFree && section.has(key)) {
        section.problem(
            key,
            "opening "
                + opening
                + " lists a value for each photograph, so it can't also have "
                + key,
            "delete it, or change the values");
      }
    }
  }

  /** As many as asked for, or one for each value of an opening that has a value for each. */
  private int photographs(PlanSection section, String opening) {
    Optional<Integer> values =
        openings.stream()
            .filter(one -> one.name().equals(opening) && one.motion() instanceof Opening.Values)
            .map(one -> ((Opening.Values) one.motion()).values().size())
            .filter(count -> count > 0)
            .findFirst();
    if (values.isEmpty()) {
      String remedy = "say how many photographs: photographs: 30";
      return section.need("photographs", 1, remedy, RevealSection::photographCount);
    }
    int photographs = section.read("photographs", values.get(), RevealSection::photographCount);
    if (photographs != values.get()) {
      section.problem(
          "photographs",
          "opening " + opening + " has " + values.get() + " values, not " + photographs,
          "give a value for each photograph, or leave photographs out");
    }
    return photographs;
  }

  /** {@code 25-30}, {@code 25-30 to and fro}. */
  private static Reveal.Cycle cycle(String text, int photographs) {
    String remedy = "write the first and the last photograph: 25-30, or 25-30 to and fro";
    TextCursor cursor = new TextCursor(text);
    int first = cursor.takeWhole("a photograph", remedy);
    if (!cursor.take("-") && !cursor.take("–")) {
      throw cursor.faultHere("'-' is expected here", remedy);
    }
    int start = cursor.offset();
    int last = cursor.takeWhole("a photograph", remedy);
    if (first < 0 || last <= first || last > photographs) {
      String sentence = "expected a later photograph, up to " + photographs;
      throw cursor.fault(start, sentence, remedy);
    }
    boolean toAndFro = cursor.takeWord("to");
    if (toAndFro && !(cursor.takeWord("and") && cursor.takeWord("fro"))) {
      throw cursor.faultHere("'and fro' is expected here", remedy);
    }
    cursor.expectEnd(remedy);
    return new Reveal.Cycle(first, last, toAndFro);
  }

  private static int photographCount(String text) {
    return Measures.whole(text, 1, MOST_PHOTOGRAPHS);
  }
}
