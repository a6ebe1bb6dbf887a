package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.barsheet.plan.source.YamlEvents;
import org.barsheet.plan.source.YamlText;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Writes a text in place of another, quoted as that one was. */
final class YamlScalar {

  private final String whole;

  /**
   * Writes into a text.
   *
   * @param whole the plan's text as it is read
   */
  YamlScalar(String whole) {
    this.whole = whole;
  }

  /** What to change so that a scalar is another text. */
  List<Splice> replace(YamlNode.Scalar old, String now) {
    char first = old.value() < old.end() ? whole.charAt(old.value()) : ' ';
    if (first == '|' || first == '>') {
      return replaceBlock(old, now);
    }
    String text = first == '\'' || first == '"' ? quoted(now, first) : plain(now, old.flow());
    boolean touches = old.value() == old.end() && touchesWhatIsBefore(old.value());
    return List.of(new Splice(old.value(), old.end(), (touches ? " " : "") + text));
  }

  private boolean touchesWhatIsBefore(int at) {
    return at > 0 && !Character.isWhitespace(whole.charAt(at - 1));
  }

  /**
   * A text in lines of its own (YAML 1.2.2, 8.1) ends up on the line of its sign; a comment there
   * and the blank lines after it stay.
   */
  private List<Splice> replaceBlock(YamlNode.Scalar old, String now) {
    int sign = old.value();
    int behind = sign + 1;
    while ("+-0123456789".indexOf(charAt(behind)) >= 0) {
      behind++;
    }
    List<Splice> splices = new ArrayList<>();
    splices.add(new Splice(sign, behind, plain(now, false)));
    int line = whole.indexOf('\n', behind);
    if (line >= 0 && line < old.end()) {
      splices.add(new Splice(line, old.end(), ""));
    }
    return splices;
  }

  private char charAt(int index) {
    return index < whole.length() ? whole.charAt(index) : '\n';
  }

  /** The text itself where YAML reads the same text there, else in double quotes. */
  static String plain(String text, boolean flow) {
    return isPlain(text, flow) ? text : YamlText.quoted(text);
  }

  private static boolean isPlain(String text, boolean flow) {
    List<Event> scalars = new ArrayList<>();
    try {
      Iterator<Event> events = YamlEvents.of(flow ? "{k: " + text + "}" : "k: " + text);
      events.forEachRemaining(event -> addValue(event, scalars));
    } catch (YamlEngineException noYaml) {
      return false;
    }
    return scalars.size() == 2
        && scalars.get(1) instanceof ScalarEvent value
        && value.isPlain()
        && value.getValue().equals(text)
        && !text.isEmpty();
  }

  private static void addValue(Event event, List<Event> values) {
    switch (event.getEventId()) {
      case Scalar, Alias, SequenceStart -> values.add(event);
      default -> {}
    }
  }

  /** The text between quotes of a kind, or in double ones where single ones could not hold it. */
  static String quoted(String text, char quote) {
    boolean single = quote == '\'' && text.chars().noneMatch(Character::isISOControl);
    return single ? "'" + text.replace("'", "''") + "'" : YamlText.quoted(text);
  }
}
