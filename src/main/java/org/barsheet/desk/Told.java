package org.barsheet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.Problem;
import org.barsheet.plan.edit.PlanTexts;
import org.barsheet.production.editing.Outcome.BothChanged;

/** What a window is told that asked for an edit, as JSON. */
final class Told {

  private Told() {}

  /**
   * It is made, or could be.
   *
   * @param found errors and warnings that come with it
   * @param motif whose returns are told as well, or ""
   */
  static String done(LaidPlan next, List<String> found, String motif) {
    JsonObject told = new JsonObject();
    told.add("moved", texts(next.moved()));
    told.add("found", texts(found));
    if (!motif.isEmpty()) {
      told.add("returns", returns(next.film(), motif));
    }
    return told.toString();
  }

  private static JsonArray returns(Optional<FilmSheet> film, String motif) {
    JsonArray list = new JsonArray();
    for (Cue cue : film.map(laid -> laid.timing().cues()).orElse(List.of())) {
      cue.occurrence()
          .filter(found -> cue.name().equals(motif))
          .ifPresent(
              found -> {
                JsonObject each = new JsonObject();
                each.addProperty("place", cue.place().toString());
                each.addProperty("frame", cue.frame());
                each.addProperty("certainty", found.certainty().name().toLowerCase(Locale.ROOT));
                each.addProperty("form", found.variation().description());
                list.add(each);
              });
    }
    return list;
  }

  /**
   * It cannot be made.
   *
   * @param texts the plan with it, where that can be written at all
   */
  static String refused(List<Problem> problems, Optional<PlanTexts> texts) {
    JsonObject told = new JsonObject();
    told.add("refused", problems(problems, texts));
    return told.toString();
  }

  /** Somebody else changed the same places: which of the two counts is asked. */
  static String asked(List<BothChanged> places) {
    JsonArray list = new JsonArray();
    for (BothChanged both : places) {
      JsonObject each = new JsonObject();
      each.addProperty("place", both.place());
      each.addProperty("mine", both.mine());
      each.addProperty("theirs", both.theirs());
      list.add(each);
    }
    JsonObject told = new JsonObject();
    told.add("asked", list);
    return told.toString();
  }

  static JsonArray texts(List<String> texts) {
    JsonArray list = new JsonArray();
    texts.forEach(list::add);
    return list;
  }

  /**
   * Problems as a page takes them, each with its fixes.
   *
   * @param texts the plan that has them, where it can be read as keys and values
   */
  static JsonArray problems(List<Problem> problems, Optional<PlanTexts> texts) {
    JsonArray list = problems(problems);
    texts.ifPresent(
        with -> {
          FixEdits fixes = new FixEdits(with.tree());
          for (int i = 0; i < problems.size(); i++) {
            list.get(i).getAsJsonObject().add("fixes", fixes.of(problems.get(i).remedy()));
          }
        });
    return list;
  }

  /** Problems as a page takes them. */
  static JsonArray problems(List<Problem> problems) {
    JsonArray list = new JsonArray();
    for (Problem problem : problems) {
      JsonObject each = new JsonObject();
      each.addProperty("place", problem.position());
      each.addProperty("sentence", problem.sentence());
      each.addProperty("remedy", problem.remedy());
      list.add(each);
    }
    return list;
  }
}
