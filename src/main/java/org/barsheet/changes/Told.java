package org.barsheet.changes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.changes.PhotographChange.Use;
import org.barsheet.timing.PanelChange;

/**
 * What one person must be told.
 *
 * @param who {@code director}, {@code animator}, {@code editor}, or a performer's name
 * @param sentences without closing full stops; at least one
 */
public record Told(String who, List<String> sentences) {

  public static final String DIRECTOR = "director";
  public static final String ANIMATOR = "animator";
  public static final String EDITOR = "editor";

  public Told {
    sentences = List.copyOf(sentences);
  }

  /** Everybody who must be told something. */
  static List<Told> of(Changes changes) {
    Map<String, List<String>> told = new LinkedHashMap<>();
    told.put(DIRECTOR, changes.ofMusicAndCues());
    told.put(ANIMATOR, animator(changes));
    told.put(EDITOR, PanelChange.sentences(changes.panels()));
    for (SeenChange seen : changes.seen()) {
      told.computeIfAbsent(seen.seen().performer(), who -> new ArrayList<>()).add(seen.sentence());
    }
    return told.entrySet().stream()
        .filter(person -> !person.getValue().isEmpty())
        .map(person -> new Told(person.getKey(), person.getValue()))
        .toList();
  }

  private static List<String> animator(Changes changes) {
    List<String> sentences = new ArrayList<>();
    for (ChangeLine line : ChangeLines.photographs(changes)) {
      sentences.add(line.name() + ": " + line.remedy());
    }
    List<String> opened =
        changes.photographs().stream()
            .filter(photograph -> photograph.use() == Use.TAKE)
            .map(PhotographChange::movement)
            .distinct()
            .filter(changes.identities()::hasOtherPhotographs)
            .toList();
    for (String movement : opened) {
      sentences.add(
          movement
              + ": if it was already opened for photographs, cut a new piece; paper rarely closes cleanly");
    }
    return sentences;
  }
}
