package org.barsheet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.plan.source.Entry;

/**
 * The fixes of a conflict as edits that a button makes. They are told in words, {@code let panel 3
 * shrink to 2 bars}; what is not among the words known here stays words.
 */
final class FixEdits {

  private static final Pattern PLACE =
      Pattern.compile("put panel (.+?) on (.+?)(?: \\(.*\\))?, [0-9]+ frames? (?:earlier|later)");
  private static final Pattern LENGTH = Pattern.compile("let panel (.+) (shrink|grow) to (.+)");
  private static final Pattern INTO = Pattern.compile("let panel (.+?) begin (.+ into panel .+)");
  private static final Pattern NO_CUE = Pattern.compile("leave out the cue of panel (.+)");
  private static final Pattern FEWER =
      Pattern.compile(
          "give (.+) in panel (.+) at most ([0-9]+) photographs? on ones instead of [0-9]+");
  private static final Pattern UNLOCK = Pattern.compile("unlock panel (.+)");

  private final Entry.Keyed plan;

  /**
   * Fixes of a plan.
   *
   * @param plan as typed
   */
  FixEdits(Entry.Keyed plan) {
    this.plan = plan;
  }

  /** Every fix of a remedy, with the edits that make it where they are known. */
  JsonArray of(String remedy) {
    JsonArray fixes = new JsonArray();
    for (String words : List.of(remedy.split("; or ", -1))) {
      JsonObject fix = new JsonObject();
      fix.addProperty("words", words);
      edits(words).ifPresent(edits -> fix.add("edits", edits));
      fixes.add(fix);
    }
    return fixes;
  }

  private Optional<JsonArray> edits(String words) {
    Matcher fewer = FEWER.matcher(words);
    return fewer.matches()
        ? fewer(fewer.group(2), fewer.group(1), fewer.group(3))
        : edit(words).map(FixEdits::list);
  }

  /** Fewer photographs of a reveal, on ones; nothing where the panel names no such opening. */
  private Optional<JsonArray> fewer(String panel, String opening, String photographs) {
    Optional<Entry> reveals =
        panels()
            .map(panels -> panels.items().get(Math.max(0, index(panels, "panel", panel))))
            .flatMap(found -> member(found, "reveals"));
    int reveal =
        reveals.filter(Entry.Items.class::isInstance).isPresent()
            ? index((Entry.Items) reveals.get(), "opening", opening)
            : 0;
    Optional<JsonArray> way = way(panel, "reveals").filter(found -> reveal >= 0);
    way.ifPresent(found -> found.add(reveal));
    return way.map(
        found ->
            list(put(key(found, "photographs"), photographs), put(key(found, "shown"), "on ones")));
  }

  private static JsonArray key(JsonArray way, String key) {
    JsonArray longer = way.deepCopy();
    longer.add(key);
    return longer;
  }

  private static JsonObject put(JsonArray way, String value) {
    JsonObject edit = new JsonObject();
    edit.add("put", way);
    edit.addProperty("value", value);
    return edit;
  }

  private Optional<JsonObject> edit(String words) {
    Matcher place = PLACE.matcher(words);
    if (place.matches()) {
      return put(place.group(1), "cue", place.group(2));
    }
    Matcher into = INTO.matcher(words);
    if (into.matches()) {
      return put(into.group(1), "cue", into.group(2));
    }
    Matcher length = LENGTH.matcher(words);
    if (length.matches()) {
      return put(length.group(1), "length", length.group(3));
    }
    Matcher noCue = NO_CUE.matcher(words);
    if (noCue.matches()) {
      return remove(noCue.group(1), "cue");
    }
    Matcher unlock = UNLOCK.matcher(words);
    return unlock.matches() ? remove(unlock.group(1), "locked") : Optional.empty();
  }

  private Optional<JsonObject> put(String panel, String key, String value) {
    return way(panel, key).map(way -> put(way, value));
  }

  private Optional<JsonObject> remove(String panel, String key) {
    return way(panel, key)
        .map(
            way -> {
              JsonObject edit = new JsonObject();
              edit.add("remove", way);
              return edit;
            });
  }

  /** The way to a key of the panel of a name, if the plan lists such a panel. */
  private Optional<JsonArray> way(String panel, String key) {
    return panels()
        .map(panels -> index(panels, "panel", panel))
        .filter(index -> index >= 0)
        .map(
            index ->
                list(
                    new JsonPrimitive("panels"), new JsonPrimitive(index), new JsonPrimitive(key)));
  }

  private Optional<Entry.Items> panels() {
    return member(plan, "panels")
        .filter(Entry.Items.class::isInstance)
        .map(Entry.Items.class::cast);
  }

  private static Optional<Entry> member(Entry table, String key) {
    return table instanceof Entry.Keyed keyed
        ? keyed.member(key).map(Entry.Member::value)
        : Optional.empty();
  }

  /** Which of some tables has a text under a key, -1 where none has. */
  private static int index(Entry.Items tables, String key, String text) {
    for (int i = 0; i < tables.items().size(); i++) {
      if (member(tables.items().get(i), key).orElse(tables) instanceof Entry.Text found
          && found.text().strip().equals(text)) {
        return i;
      }
    }
    return -1;
  }

  private static JsonArray list(JsonElement... items) {
    JsonArray list = new JsonArray();
    for (JsonElement item : items) {
      list.add(item);
    }
    return list;
  }
}
