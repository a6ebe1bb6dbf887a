package org.barsheet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.Where;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanPath;
import org.barsheet.plan.edit.Together;
import org.barsheet.plan.edit.TreeEdit;
import org.barsheet.plan.edit.whole.JoinPanels;
import org.barsheet.plan.edit.whole.NewName;
import org.barsheet.plan.edit.whole.SplitPanel;
import org.barsheet.plan.source.Entry;

/** What a page asks to be changed, read from JSON; and a plan's tree as the page takes it. */
final class Orders {

  private static final Where NOWHERE = new Where("", "");

  private Orders() {}

  /**
   * Edits one after another: each names what it does, where ({@code ["panels", 3, "cue"]}), and
   * with what.
   *
   * @throws InputException if it is not that
   */
  static PlanEdit read(String json) {
    try {
      List<PlanEdit> edits = new ArrayList<>();
      for (JsonElement each : order(json).getAsJsonArray("edits")) {
        edits.add(edit(each.getAsJsonObject()));
      }
      return new Together(edits);
    } catch (RuntimeException notOurs) {
      throw new InputException(
          Problem.ofFile("", "the desk doesn't understand this order", "load the page again"));
    }
  }

  private static JsonObject order(String json) {
    return JsonParser.parseString(json).getAsJsonObject();
  }

  /** The state that the window shows which asks, -1 where it doesn't say. */
  static long version(String json) {
    JsonElement version = order(json).get("version");
    return version == null ? -1 : version.getAsLong();
  }

  /** The motif whose returns are wanted, or "". */
  static String motif(String json) {
    JsonElement motif = order(json).get("motif");
    return motif == null ? "" : motif.getAsString();
  }

  private static PlanEdit edit(JsonObject order) {
    if (order.has("put")) {
      return new TreeEdit.Put(path(order.getAsJsonArray("put")), entry(order.get("value")));
    }
    if (order.has("remove")) {
      return new TreeEdit.Remove(path(order.getAsJsonArray("remove")));
    }
    if (order.has("insert")) {
      return new TreeEdit.Insert(path(order.getAsJsonArray("insert")), entry(order.get("value")));
    }
    if (order.has("move")) {
      return new TreeEdit.Move(path(order.getAsJsonArray("move")), order.get("to").getAsInt());
    }
    return whole(order);
  }

  /** What concerns several places of the plan. */
  private static PlanEdit whole(JsonObject order) {
    if (order.has("split")) {
      return new SplitPanel(text(order, "split"), text(order, "second"), text(order, "cue"));
    }
    if (order.has("join")) {
      return new JoinPanels(text(order, "join"));
    }
    NewName.Of of = NewName.Of.valueOf(text(order, "name").toUpperCase(Locale.ROOT));
    return new NewName(of, text(order, "before"), text(order, "now"));
  }

  private static String text(JsonObject order, String key) {
    return order.get(key).getAsString();
  }

  private static PlanPath path(JsonArray steps) {
    PlanPath path = PlanPath.ROOT;
    for (JsonElement step : steps) {
      path =
          step.getAsJsonPrimitive().isNumber()
              ? path.item(step.getAsInt())
              : path.key(step.getAsString());
    }
    return path;
  }

  private static Entry entry(JsonElement value) {
    if (value.isJsonArray()) {
      List<Entry> items = new ArrayList<>();
      value.getAsJsonArray().forEach(item -> items.add(entry(item)));
      return new Entry.Items(items, NOWHERE);
    }
    if (value.isJsonObject()) {
      List<Entry.Member> members = new ArrayList<>();
      for (Map.Entry<String, JsonElement> each : value.getAsJsonObject().entrySet()) {
        members.add(new Entry.Member(each.getKey(), NOWHERE, entry(each.getValue())));
      }
      return new Entry.Keyed(members, NOWHERE);
    }
    return new Entry.Text(value.getAsString(), NOWHERE);
  }

  /** A plan as typed. */
  static JsonElement json(Entry entry) {
    if (entry instanceof Entry.Items items) {
      JsonArray list = new JsonArray();
      items.items().forEach(item -> list.add(json(item)));
      return list;
    }
    if (entry instanceof Entry.Keyed keyed) {
      JsonObject table = new JsonObject();
      keyed.members().forEach(member -> table.add(member.key(), json(member.value())));
      return table;
    }
    return new JsonPrimitive(((Entry.Text) entry).text());
  }
}
