package org.barsheet.plan.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.input.SyntaxException;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.MotifNote;
import org.barsheet.motif.Notes;
import org.barsheet.plan.Length;
import org.barsheet.plan.MotifNames;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Place;
import org.barsheet.plan.TextCursor;
import org.barsheet.plan.WordChoice;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;

/** Reads the motifs. */
final class MotifSection {

  /** Forms a plan may ask for; the others are always looked for or follow from {@code match}. */
  private static final WordChoice<Form> FORMS =
      WordChoice.of(
          List.of(
              Form.INVERTED,
              Form.RETROGRADE,
              Form.AUGMENTED,
              Form.DIMINISHED,
              Form.ORNAMENTED,
              Form.SHORTENED),
          Form::word);

  private static final int MOST_NOTES = 1000;
  private static final String ACCENTS = "write first, last or note 3";
  private static final Length ONE_BAR = Length.of(Length.Unit.BARS, BigFraction.ONE);

  private final PlanReading reading;
  private final FilmSection film;

  MotifSection(PlanReading reading, FilmSection film) {
    this.reading = reading;
    this.film = film;
  }

  List<MotifRequest> read(PlanSection plan) {
    return plan.named("motifs", "motif", PlanKeys.MOTIF).stream().map(this::motif).toList();
  }

  private MotifRequest motif(PlanSection.Named named) {
    try {
      MotifNames.check(named.name());
    } catch (SyntaxException wrong) {
      reading.problems().add(named.where(), "", wrong);
    }
    PlanSection section = named.section();
    List<MotifRequest.Shape> shapes = new ArrayList<>();
    first(section).ifPresent(shapes::add);
    for (PlanSection also : section.sections("also", "further shape", PlanKeys.ALSO)) {
      shapes.add(also.has("notes") ? written(also) : heardAt(also));
    }
    return new MotifRequest(
        named.name().strip(),
        shapes,
        section.read("accent", Accent.FIRST, MotifSection::accent),
        section.read("match", Match.TONAL, WordChoice.of(Match.values())),
        forms(section),
        named.where());
  }

  private Optional<MotifRequest.Shape> first(PlanSection section) {
    if (section.has("heard-at") == section.has("notes")) {
      String sentence =
          section.has("notes")
              ? section.title() + " has both 'heard-at' and 'notes'"
              : section.title() + " has neither 'heard-at' nor 'notes'";
      section.problem(
          "notes",
          sentence,
          "say where it is heard, or write its notes; put further shapes under also");
      return Optional.empty();
    }
    return section.has("notes")
        ? Optional.of(written(section))
        : section.section("heard-at", PlanKeys.HEARD_AT).map(this::heardAt);
  }

  private static MotifRequest.Shape written(PlanSection section) {
    return new MotifRequest.Written(section.read("notes", List.of(), MotifSection::notes));
  }

  private static List<MotifNote> notes(String text) {
    List<MotifNote> notes = Notes.parse(text);
    if (notes.isEmpty() || notes.size() > MOST_NOTES) {
      String sentence = notes.isEmpty() ? "there are no notes here" : "more than 1000 notes";
      throw new SyntaxException(text, 0, sentence, "write a short figure: A3/4 C4/8 E4/8 D4/2");
    }
    return notes;
  }

  private MotifRequest.Shape heardAt(PlanSection section) {
    return new MotifRequest.HeardAt(
        section.need("place", new Place.Anywhere(), "write place: bar 3", this::heardPlace),
        section.need("length", ONE_BAR, "write length: 1 bar", MotifSection::oneLength),
        section.need(
            "part", "", "name the part that plays it, as the MIDI file does", Texts::plain),
        section.where());
  }

  private Place heardPlace(String text) {
    Place place = film.place(text);
    if (place instanceof Place.OfMotif || place instanceof Place.IntoPanel) {
      String sentence = "a motif can't be heard at '" + text.strip() + "'";
      throw new SyntaxException(text, 0, sentence, "write a bar, a mark or a timecode: bar 3");
    }
    return place;
  }

  private static Length oneLength(String text) {
    Length length = Length.parse(text);
    if (length.isRange() || length.most().signum() == 0) {
      String sentence = "expected one length above 0";
      throw new SyntaxException(text, 0, sentence, "write length: 1 bar");
    }
    return length;
  }

  private static Accent accent(String text) {
    TextCursor cursor = new TextCursor(text);
    Accent accent;
    if (cursor.takeWord("first")) {
      accent = Accent.FIRST;
    } else if (cursor.takeWord("last")) {
      accent = Accent.LAST;
    } else if (cursor.takeWord("note")) {
      int start = cursor.offset();
      int note = cursor.takeWhole("the note's number", ACCENTS);
      if (note < 1) {
        throw cursor.fault(start, "notes count from 1", ACCENTS);
      }
      accent = new Accent(note);
    } else {
      throw cursor.faultHere("this isn't a note of the motif", ACCENTS);
    }
    cursor.expectEnd(ACCENTS);
    return accent;
  }

  private static Set<Form> forms(PlanSection section) {
    Set<Form> forms = EnumSet.noneOf(Form.class);
    forms.addAll(section.readAll("forms", FORMS));
    return forms;
  }
}
