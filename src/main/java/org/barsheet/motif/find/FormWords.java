package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.barsheet.motif.Form;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.Comparison;
import org.barsheet.motif.match.NoteField;
import org.barsheet.score.IntervalWords;
import org.barsheet.score.Score;

/** A return's form in words: "tonal, up a fifth, last note shortened, in Viola under Flute". */
final class FormWords {

  private static final int MOST_NOTES_NAMED = 2;

  private final Score score;
  private final NoteField field;
  private final Chain chain;
  private final Comparison comparison;
  private final List<Voice> voices;
  private final int above;

  /**
   * Prepares the words.
   *
   * @param voices the parts that play it, the leading one first
   * @param above the part that sounds above it, −1 for none
   */
  FormWords(
      Score score,
      NoteField field,
      Chain chain,
      Comparison comparison,
      List<Voice> voices,
      int above) {
    this.score = score;
    this.field = field;
    this.chain = chain;
    this.comparison = comparison;
    this.voices = voices;
    this.above = above;
  }

  String sentence() {
    List<String> words = form();
    notes(comparison.missing(), "missing", words);
    notes(comparison.changed(), "changed", words);
    lastNote(words);
    return withPlace(words);
  }

  /** The same without a word on single notes: "tonal, up a fifth, in Viola under Flute". */
  String outline() {
    return withPlace(form());
  }

  private List<String> form() {
    List<String> words = new ArrayList<>();
    comparison.forms().forEach(form -> words.add(word(form)));
    if (comparison.transposition() != 0 || !comparison.forms().contains(Form.AS_GIVEN)) {
      words.add(IntervalWords.move(comparison.transposition()));
    }
    return words;
  }

  private String withPlace(List<String> words) {
    if (field.hasSeveralParts()) {
      words.add(where());
    }
    return String.join(", ", words);
  }

  private String word(Form form) {
    return switch (form) {
      case SHORTENED -> "shortened to its first " + chain.notes().size() + " notes";
      case AUGMENTED, DIMINISHED -> form.word() + " to " + stretch();
      default -> form.word();
    };
  }

  private String stretch() {
    String factor = chain.pattern().transform().stretch().toString().replace(" ", "");
    return switch (factor) {
      case "2" -> "twice its length";
      case "1/2" -> "half its length";
      case "3" -> "three times its length";
      default -> factor + " of its length";
    };
  }

  private void notes(List<Integer> indexes, String what, List<String> words) {
    if (indexes.size() > MOST_NOTES_NAMED) {
      words.add(indexes.size() + " notes " + what);
    } else if (!indexes.isEmpty()) {
      words.add(indexes.stream().map(this::note).collect(Collectors.joining(" and ")) + " " + what);
    }
  }

  private String note(int index) {
    int last = chain.notes().size() - 1;
    return index == 0 ? "first note" : index == last ? "last note" : "note " + (index + 1);
  }

  private void lastNote(List<String> words) {
    int last = chain.notes().size() - 1;
    if (!chain.notes().has(last)) {
      return;
    }
    long asked = chain.pattern().length(last);
    long heard = field.length(chain.notes().get(last));
    if (4 * heard < 3 * asked) {
      words.add("last note shortened");
    } else if (2 * heard > 3 * asked) {
      words.add("last note lengthened");
    }
  }

  private String where() {
    StringBuilder words = new StringBuilder("in ").append(name(voices.get(0).part()));
    if (above >= 0) {
      words.append(" under ").append(name(above));
    }
    for (int i = 1; i < voices.size(); i++) {
      words.append(i == 1 ? " with " : " and ").append(name(voices.get(i).part()));
      if (voices.get(i).distance() != 0) {
        words.append(' ').append(IntervalWords.apart(voices.get(i).distance()));
      }
    }
    return words.toString();
  }

  private String name(int part) {
    return score.parts().get(part).name();
  }
}
