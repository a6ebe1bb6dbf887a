package org.barsheet.motif;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.cues.MotifSearch;
import org.barsheet.input.InputException;
import org.barsheet.motif.Arrangement.Planted;
import org.barsheet.motif.find.MotifFinder;
import org.barsheet.motif.find.MotifHearing;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.MusicFinder;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.suggestions.MotifSuggestions;
import org.barsheet.suggestions.Suggestion;

/** Counts what the finder and the suggestions make of arrangements whose returns are known. */
final class ArrangementFigures {

  private static final double TOLERANCE_QUARTERS = 0.5;
  private static final int FIRST_SUGGESTIONS = 5;
  private static final Set<Form> ASKED =
      EnumSet.of(Form.INVERTED, Form.RETROGRADE, Form.AUGMENTED, Form.DIMINISHED);

  /** How many of how many. */
  static final class Share {
    private int hit;
    private int all;

    void add(boolean isHit) {
      hit += isHit ? 1 : 0;
      all++;
    }

    double value() {
      return all == 0 ? 1 : (double) hit / all;
    }

    int all() {
      return all;
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%.3f (%d of %d)", value(), hit, all);
    }
  }

  private final Map<String, Share> shares = new TreeMap<>();
  private final boolean isTalking = Boolean.getBoolean("figures.talk");
  private double minutes;
  private int falsePossible;

  /** The share under a name, empty if nothing was counted. */
  Share share(String name) {
    return shares.computeIfAbsent(name, n -> new Share());
  }

  /** Possible returns a minute that are none. */
  double falsePossibleAMinute() {
    return falsePossible / Math.max(minutes, 1e-9);
  }

  void add(Arrangement piece) {
    Music music = MusicFinder.follow(piece.score(), TempoRequest.DEFAULT);
    MotifFinder finder = finder(music);
    minutes += piece.minutes();
    piece.motifs().forEach((name, line) -> add(piece, finder, name, line));
    suggestions(piece, music);
  }

  private static MotifFinder finder(Music music) {
    return MotifSearch.reading(music).apply(music.score());
  }

  private void add(Arrangement piece, MotifFinder finder, String name, List<MotifNote> line) {
    List<Occurrence> plain = finder.find(motif(name, line, Set.of()));
    List<Occurrence> counted = plain.stream().filter(one -> one.number() > 0).toList();
    String kind = piece.timing() + " ";
    recall(piece, name, counted, false, kind + "written ");
    precision(piece, name, plain, kind);
    List<Occurrence> asked = finder.find(motif(name, line, ASKED));
    recall(
        piece,
        name,
        asked.stream().filter(one -> one.number() > 0).toList(),
        true,
        kind + "asked ");
    for (Occurrence one : asked) {
      boolean isForm = one.variation().forms().stream().anyMatch(ASKED::contains);
      if (one.certainty() == Certainty.LIKELY && isForm && !isUnsure(piece, name, one)) {
        share("precision asked forms, likely").add(isPlanted(piece, name, one));
        if (isTalking) {
          System.out.println(
              "asked "
                  + isPlanted(piece, name, one)
                  + " "
                  + piece.name()
                  + " "
                  + name
                  + " "
                  + line.size()
                  + " "
                  + one.score()
                  + " "
                  + one.variation().description());
        }
      }
    }
    heard(piece, finder, name, kind);
  }

  private static Motif motif(String name, List<MotifNote> line, Set<Form> forms) {
    return new Motif(name, List.of(line), Accent.FIRST, Match.TONAL, forms);
  }

  private void recall(
      Arrangement piece, String name, List<Occurrence> found, boolean asked, String kind) {
    List<Occurrence> open = new ArrayList<>(found);
    int notes = piece.line(name).size();
    for (Planted truth : piece.planted()) {
      if (truth.motif().equals(name) && truth.isAsked() == asked) {
        boolean isHit = take(piece, open, truth);
        share(kind + "all").add(isHit);
        share(kind + truth.form()).add(isHit);
        if (!isHit && isTalking) {
          System.out.println(
              "missed " + piece.name() + " " + kind + truth + " " + notes + " notes");
        }
      }
    }
  }

  private boolean take(Arrangement piece, List<Occurrence> open, Planted truth) {
    for (Occurrence one : open) {
      if (near(piece, one, truth.quarter())) {
        return open.remove(one);
      }
    }
    return false;
  }

  private static boolean near(Arrangement piece, Occurrence one, double quarter) {
    double at = one.startTick() / (double) piece.score().ticksPerQuarter();
    return Math.abs(at - quarter) <= TOLERANCE_QUARTERS;
  }

  private void precision(Arrangement piece, String name, List<Occurrence> found, String kind) {
    int notes = piece.line(name).size();
    List<Occurrence> possible =
        found.stream().filter(one -> one.certainty() == Certainty.POSSIBLE).toList();
    for (Occurrence one : found) {
      boolean isRight = isPlanted(piece, name, one);
      if (!isUnsure(piece, name, one)) {
        String word = one.certainty().name().toLowerCase(Locale.ROOT);
        share("precision " + word).add(isRight);
        share(kind + "precision " + word).add(isRight);
        falsePossible += isRight || one.certainty() != Certainty.POSSIBLE ? 0 : 1;
        if (!isRight && isTalking) {
          System.out.println(
              "false "
                  + piece.name()
                  + " "
                  + name
                  + " "
                  + notes
                  + " notes, quarter "
                  + one.startTick() / (double) piece.score().ticksPerQuarter()
                  + " "
                  + word
                  + " "
                  + one.score()
                  + " "
                  + one.variation().description());
        }
      }
    }
    for (Planted truth : piece.planted()) {
      boolean isDamaged = truth.form().equals("missing") || truth.form().equals("one_note");
      if (truth.motif().equals(name) && notes <= 6 && isDamaged) {
        share("short and damaged, found")
            .add(found.stream().anyMatch(one -> near(piece, one, truth.quarter())));
        share("short and damaged, as possible")
            .add(possible.stream().anyMatch(one -> near(piece, one, truth.quarter())));
      }
    }
  }

  private static boolean isPlanted(Arrangement piece, String name, Occurrence one) {
    return piece.planted().stream()
        .anyMatch(truth -> truth.motif().equals(name) && near(piece, one, truth.quarter()));
  }

  private static boolean isUnsure(Arrangement piece, String name, Occurrence one) {
    return piece.unsure().stream()
        .anyMatch(place -> place.motif().equals(name) && near(piece, one, place.quarter()));
  }

  /** The motif taken from where it is first heard, at the place a plan would name. */
  private void heard(Arrangement piece, MotifFinder finder, String name, String kind) {
    Planted first =
        piece.planted().stream()
            .filter(truth -> truth.motif().equals(name) && truth.form().equals("first"))
            .findFirst()
            .orElseThrow();
    Score score = piece.score();
    Part part =
        score.parts().stream()
            .filter(one -> one.name().equals(first.part()))
            .findFirst()
            .orElse(score.parts().get(0));
    long from = Math.round(first.quarter() * score.ticksPerQuarter());
    long to = Math.round(first.endQuarter() * score.ticksPerQuarter());
    List<MotifNote> line;
    try {
      line = MotifHearing.of(score).hear(part, from, to);
    } catch (InputException refused) {
      if (isTalking) {
        System.out.println("unheard " + piece.name() + " " + name + " " + refused.problems());
      }
      line = List.of(new MotifNote(BigFraction.ZERO, BigFraction.ONE, 60));
    }
    share(kind + "heard-at takes every note").add(line.size() == piece.line(name).size());
    List<Occurrence> found =
        line.size() < 3
            ? List.of()
            : finder.find(motif(name, line, Set.of())).stream()
                .filter(one -> one.number() > 0)
                .toList();
    List<Occurrence> open = new ArrayList<>(found);
    for (Planted truth : piece.planted()) {
      if (truth.motif().equals(name) && !truth.isAsked()) {
        boolean isHit = take(piece, open, truth);
        share(kind + "heard-at all").add(isHit);
        if (!isHit && isTalking) {
          System.out.println(
              "heard missed "
                  + piece.name()
                  + " "
                  + truth
                  + " "
                  + line.size()
                  + " "
                  + Notes.print(line));
        }
      }
    }
  }

  private void suggestions(Arrangement piece, Music music) {
    List<Suggestion> first =
        MotifSuggestions.of(music.score()).stream().limit(FIRST_SUGGESTIONS).toList();
    for (String name : piece.motifs().keySet()) {
      boolean isHit = first.stream().anyMatch(one -> piece.isMotif(name, one));
      share(piece.timing() + " suggested among five").add(isHit);
      if (!isHit && isTalking) {
        System.out.println(
            "not suggested "
                + piece.name()
                + " "
                + name
                + " "
                + first.stream()
                    .map(s -> s.part() + ":" + s.returns().size() + ":" + s.notes())
                    .toList());
      }
    }
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    shares.forEach(
        (name, share) -> text.append(String.format(Locale.ROOT, "%-45s %s%n", name, share)));
    text.append(
        String.format(
            Locale.ROOT, "%-45s %.3f%n", "false possible ones a minute", falsePossibleAMinute()));
    return text.toString();
  }
}
