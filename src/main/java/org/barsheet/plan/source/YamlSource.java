package org.barsheet.plan.source;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.input.InputException;
import org.barsheet.input.PlainText;
import org.barsheet.input.Problem;
import org.barsheet.plan.Where;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Makes entries of YAML 1.2. Every scalar is kept as the text that was typed, so that {@code 1.10},
 * {@code on} and {@code 1e3} mean what they say.
 */
public final class YamlSource {

  /** Levels of nesting; the plan's own schema has 6. */
  static final int MOST_LEVELS = 20;

  /** Values, those repeated by aliases counted each time. */
  static final int MOST_VALUES = 200_000;

  private final PlanReading reading;
  private final String file;
  private final Map<String, Anchored> anchors = new HashMap<>();
  private final Map<String, Where> places = new LinkedHashMap<>();
  private final Set<String> repeated = new HashSet<>();
  private Iterator<Event> events = List.<Event>of().iterator();
  private String[] lines = {};
  private int values;

  /** An entry that aliases repeat, and how many values it holds. */
  private record Anchored(Entry entry, int values) {}

  public YamlSource(PlanReading reading) {
    this.reading = reading;
    this.file = reading.file().toString();
  }

  /**
   * The plan's keyed values. What is wrong with single values is left to the reading's problems.
   *
   * @throws InputException if the text is no YAML, or beyond a limit
   */
  public Entry.Keyed read(String text) {
    Where whole = new Where(file, "");
    reading.problems().seen(whole);
    lines = text.split("\n", -1);
    try {
      events = YamlEvents.of(text);
      Entry root = document();
      reportUnusedAnchors();
      if (root instanceof Entry.Keyed keyed) {
        return new Entry.Keyed(keyed.members(), whole);
      }
    } catch (YamlEngineException wrong) {
      throw new InputException(YamlFault.explain(file, lines, wrong));
    }
    throw new InputException(
        Problem.ofFile(
            file, "this isn't a plan: there is no 'title:'", "start with title, score and film"));
  }

  private Entry document() {
    next();
    Event start = next();
    if (start.getEventId() == Event.ID.StreamEnd) {
      throw new InputException(
          Problem.ofFile(file, "the plan is empty", "start with title, score and film"));
    }
    Entry root = entry(next(), 0);
    next();
    Event end = next();
    if (end.getEventId() != Event.ID.StreamEnd) {
      reading.problems().add(where(end), "a second document begins here", "delete the line ---");
    }
    return root;
  }

  /** A name behind & that nothing repeats was meant as text. */
  private void reportUnusedAnchors() {
    places.keySet().removeAll(repeated);
    places.forEach(
        (anchor, where) ->
            reading
                .problems()
                .add(
                    where,
                    "'&" + anchor + "' has a special meaning in YAML and would be lost",
                    "quote the text: \"&" + anchor + " …\""));
  }

  private Event next() {
    return events.next();
  }

  private Where where(Event event) {
    Optional<Mark> mark = event.getStartMark();
    String position = mark.map(at -> position(at.getLine() + 1, at.getColumn() + 1)).orElse("");
    Where where = new Where(file, position);
    reading.problems().seen(where);
    return where;
  }

  static String position(int line, int column) {
    return "line " + line + ", column " + column;
  }

  private Entry entry(Event event, int level) {
    if (event instanceof AliasEvent alias) {
      return repeated(alias);
    }
    int before = values;
    count(1, event);
    if (level > MOST_LEVELS) {
      throw limit(event, "more than " + MOST_LEVELS + " levels of nesting");
    }
    Entry entry;
    if (event instanceof ScalarEvent scalar) {
      entry = text(scalar);
    } else if (event instanceof MappingStartEvent mapping) {
      entry = keyed(mapping, level);
    } else {
      entry = items(event, level);
    }
    int held = values - before;
    ((NodeEvent) event)
        .getAnchor()
        .ifPresent(anchor -> keep(anchor.getValue(), new Anchored(entry, held)));
    return entry;
  }

  private void keep(String anchor, Anchored anchored) {
    anchors.put(anchor, anchored);
    places.put(anchor, anchored.entry().where());
  }

  private void count(int more, Event event) {
    values += more;
    if (values > MOST_VALUES) {
      throw limit(event, "more than " + MOST_VALUES + " values");
    }
  }

  private InputException limit(Event event, String sentence) {
    Where where = where(event);
    return new InputException(
        Problem.at(file, where.position(), sentence, "check the file; this is the limit"));
  }

  private Entry repeated(AliasEvent alias) {
    String anchor = alias.getAlias().getValue();
    repeated.add(anchor);
    Anchored anchored = anchors.get(anchor);
    if (anchored == null) {
      String name = "*" + anchor;
      reading
          .problems()
          .add(
              where(alias),
              "'" + name + "' has a special meaning in YAML, and refers to nothing",
              "quote the text if it begins with *: \"" + name + " …\"");
      return new Entry.Text("", where(alias));
    }
    count(anchored.values(), alias);
    return anchored.entry();
  }

  private Entry text(ScalarEvent scalar) {
    Where where = where(scalar);
    String tag = scalar.getTag().orElse("");
    if (!tag.isEmpty() && !tag.startsWith("tag:yaml.org,2002:")) {
      String sentence = "'" + tag + "' has a special meaning in YAML and would be lost";
      reading
          .problems()
          .add(where, sentence, "quote the text: \"" + tag + " " + shown(scalar.getValue()) + "\"");
    }
    boolean hash = scalar.getValue().isEmpty() && scalar.isPlain() && hashFollows(scalar);
    if (hash) {
      String sentence = "YAML ignores everything after #, so this has no value";
      reading.problems().add(where, sentence, "quote it: \"#28786E\"");
    }
    return new Entry.Text(scalar.getValue(), where);
  }

  private static String shown(String text) {
    return PlainText.shortened(text, 40);
  }

  /** Whether the line goes on with {@code #} and no space, as a color does. */
  private boolean hashFollows(ScalarEvent scalar) {
    Mark mark = scalar.getStartMark().orElseThrow();
    String line = mark.getLine() < lines.length ? lines[mark.getLine()] : "";
    int column = Math.min(mark.getColumn(), line.codePointCount(0, line.length()));
    String rest = line.substring(line.offsetByCodePoints(0, column));
    return rest.strip().matches("#[^\\s#].*");
  }

  private Entry items(Event start, int level) {
    Where where = where(start);
    List<Entry> items = new ArrayList<>();
    for (Event event = next(); event.getEventId() != Event.ID.SequenceEnd; event = next()) {
      items.add(entry(event, level + 1));
    }
    return new Entry.Items(items, where);
  }

  private Entry keyed(MappingStartEvent start, int level) {
    Where where = where(start);
    List<Entry.Member> members = new ArrayList<>();
    Map<String, Where> seen = new HashMap<>();
    for (Event event = next(); event.getEventId() != Event.ID.MappingEnd; event = next()) {
      Where keyWhere = where(event);
      Entry key = entry(event, level + 1);
      Event valueEvent = next();
      Entry value = entry(valueEvent, level + 1);
      String name = key instanceof Entry.Text text ? text.text() : "";
      if (!(key instanceof Entry.Text)) {
        reading.problems().add(keyWhere, "a key is one text", "write key: value");
      } else if (seen.containsKey(name)) {
        String first = seen.get(name).position();
        reading
            .problems()
            .add(
                keyWhere, "'" + name + "' is given twice, first in " + first, "delete one of them");
      } else if (hasNoValue(start, valueEvent)) {
        reading.problems().add(keyWhere, "'" + name + "' has no value", quoteAll(members, name));
      } else {
        seen.put(name, keyWhere);
        members.add(new Entry.Member(name, keyWhere, value));
      }
    }
    return new Entry.Keyed(members, where);
  }

  /** {@code {action: Fog, then light}}: a comma parts values between braces. */
  private static boolean hasNoValue(CollectionStartEvent start, Event value) {
    return start.isFlow()
        && value instanceof ScalarEvent scalar
        && scalar.isPlain()
        && scalar.getValue().isEmpty();
  }

  private static String quoteAll(List<Entry.Member> members, String name) {
    if (!members.isEmpty()) {
      Entry.Member last = members.get(members.size() - 1);
      if (last.value() instanceof Entry.Text text) {
        String whole = shown(text.text()) + ", " + shown(name);
        return "put the text in quotes if the comma belongs to it: "
            + last.key()
            + ": \""
            + whole
            + "\"";
      }
    }
    return "write a value after '" + shown(name) + ":', or quote the text";
  }
}
