package org.barsheet.desk;

import com.google.gson.JsonObject;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.Prose;
import org.barsheet.production.Production;
import org.barsheet.pulse.Music;
import org.barsheet.suggestions.Suggestion;

/** Figures of a film's score that return, and that no motif of its plan has found. */
final class Figures {

  /** More are no help. */
  private static final int MOST = 8;

  private Figures() {}

  static List<JsonObject> of(FilmSheet film) {
    Set<Long> named = new HashSet<>();
    film.timing()
        .cues()
        .forEach(
            cue -> cue.occurrence().ifPresent(found -> named.add(found.notes().ticks().get(0))));
    return Production.about(film.plan().music().score()).suggestions().stream()
        .filter(figure -> !figure.accompanies())
        .filter(
            figure ->
                2 * figure.returns().stream().filter(named::contains).count()
                    < figure.returns().size())
        .limit(MOST)
        .map(figure -> json(figure, film))
        .toList();
  }

  private static JsonObject json(Suggestion figure, FilmSheet film) {
    Music music = film.timing().music();
    long first = figure.returns().get(0);
    String part = music.score().parts().get(figure.part()).name();
    String words =
        Prose.count(figure.returns().size(), "return")
            + ", first in "
            + part
            + ", "
            + music.bars().locate(first);
    JsonObject each = new JsonObject();
    each.addProperty("notes", figure.notes());
    each.addProperty("words", words);
    each.addProperty("frame", film.timing().clock().frameAt(music.tempo().secondsAt(first)));
    return each;
  }
}
