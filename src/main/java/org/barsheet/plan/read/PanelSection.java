package org.barsheet.plan.read;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Length;
import org.barsheet.plan.LengthGrammar;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.PlaceGrammar;
import org.barsheet.plan.Slow;
import org.barsheet.plan.TextCursor;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;

/** Reads the storyboard's panels in story order. */
public final class PanelSection {

  public static final WordChoice<Slow> SLOW =
      WordChoice.of(Arrays.asList(Slow.values()), Slow::word);

  private static final String CUTS = "write auto, on cue, 1 beat before, bar 12 or mark Chorus";

  private final PlanReading reading;
  private final FilmSection film;
  private final FieldSection fields;
  private final RevealSection reveals;
  private final Known known;
  private final Set<String> names = new HashSet<>();
  private String previous = "";
  private final Map<Place, String> taken = new HashMap<>();

  PanelSection(
      PlanReading reading,
      FilmSection film,
      FieldSection fields,
      RevealSection reveals,
      Known known) {
    this.reading = reading;
    this.film = film;
    this.fields = fields;
    this.reveals = reveals;
    this.known = known;
  }

  List<Panel> read(PlanSection plan) {
    return plan.sections("panels", "panel", PlanKeys.PANEL).stream().map(this::panel).toList();
  }

  private Panel panel(PlanSection section) {
    String name = section.need("panel", "", "number it as the storyboard does", Texts::panelName);
    checkUnique(section, name);
    Place cue = section.read("cue", new Place.Anywhere(), film::place);
    checkCue(section, name, cue);
    previous = name.isEmpty() ? previous : name;
    return new Panel(
        name,
        section.read("action", "", Texts::plain),
        cue,
        section.read("cut", new Panel.AutoCut(), this::cut),
        section.read("length", PanelSection::length),
        fields.read(section),
        section.read("drawing", Texts::file).map(this::resolve),
        reveals.read(section, cue, names),
        appears(section),
        section.read("locked", false, WordChoice.YES_OR_NO),
        section.where());
  }

  private Path resolve(Path photograph) {
    return reading.resolve(photograph);
  }

  private void checkUnique(PlanSection section, String name) {
    if (name.isEmpty()) {
      return;
    }
    if (!names.add(name)) {
      section.problem("panel", "two panels are called " + name, "give each its own number");
    }
  }

  private void checkCue(PlanSection section, String name, Place cue) {
    known.checkMotif(section, "cue", cue);
    if (cue instanceof Place.IntoPanel into && !into.panel().equals(previous)) {
      String remedy =
          previous.isEmpty()
              ? "the first panel needs a place in the music"
              : "count into panel " + previous + ", or give it a place in the music";
      section.problem(
          "cue", "panel " + into.panel() + " isn't the panel right before this one", remedy);
    }
    if (isOneMoment(cue)) {
      String other = taken.putIfAbsent(cue, name);
      if (other != null) {
        section.problem(
            "cue",
            "panels " + other + " and " + name + " both ask for " + cue,
            "only one panel fits on a cue; move one of them");
      }
    }
  }

  private static boolean isOneMoment(Place cue) {
    return cue instanceof Place.AtBar
        || cue instanceof Place.AtTimecode
        || (cue instanceof Place.OfMotif of && of.number().isPresent());
  }

  /** Reports a place counted into a panel that does not come before it. */
  static void checkIntoPanel(
      PlanSection section, String key, Place place, Set<String> panelsSoFar) {
    if (place instanceof Place.IntoPanel into && !panelsSoFar.contains(into.panel())) {
      section.problem(
          key,
          "no earlier panel is called " + into.panel(),
          "count into this panel or one before it");
    }
  }

  private Panel.Cut cut(String text) {
    TextCursor cursor = new TextCursor(text);
    if (cursor.takeWord("auto")) {
      cursor.expectEnd(CUTS);
      return new Panel.AutoCut();
    }
    if (cursor.takeWord("on")) {
      if (!cursor.takeWord("cue")) {
        throw cursor.faultHere("'cue' is expected here", CUTS);
      }
      cursor.expectEnd(CUTS);
      return new Panel.OnCue();
    }
    if (cursor.atDigit() && !PlaceGrammar.looksLikeTimecode(text)) {
      return before(cursor);
    }
    return atPlace(film.place(text), cursor);
  }

  private static Panel.Cut before(TextCursor cursor) {
    Length before = LengthGrammar.readAmount(cursor, CUTS);
    if (!cursor.takeWord("before")) {
      throw cursor.faultHere("'before' is expected here", CUTS);
    }
    cursor.expectEnd(CUTS);
    return new Panel.Before(before);
  }

  private static Panel.Cut atPlace(Place place, TextCursor cursor) {
    if (place instanceof Place.OfMotif || place instanceof Place.IntoPanel) {
      throw cursor.fault(0, "a shot can't begin at '" + cursor.text() + "'", CUTS);
    }
    return new Panel.AtPlace(place);
  }

  private static Length length(String text) {
    Length length = Length.parse(text);
    if (length.most().signum() == 0) {
      throw new SyntaxException(text, 0, "expected a length above 0", "write 4 bars or 2.5 s");
    }
    return length;
  }

  private List<Panel.Appears> appears(PlanSection panel) {
    return panel.sections("appears", "appearance", PlanKeys.APPEARS).stream()
        .map(section -> new Panel.Appears(known.performer(section), known.opening(section)))
        .toList();
  }
}
