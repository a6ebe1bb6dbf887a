package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.barsheet.plan.source.Entry;

/**
 * An edit by chance, and the plan it must lead to, made in maps and lists.
 *
 * @param kind what it does to the text
 */
record RandomEdit(Kind kind, TreeEdit edit, Map<String, Object> wanted) {

  /** What becomes of the text. */
  enum Kind {
    /** One stretch is another. */
    REPLACES,
    /** One stretch is new. */
    ADDS,
    /** One stretch is gone. */
    REMOVES,
    /** The same characters in another order. */
    MOVES
  }

  private static final PlanPath PANELS = PlanPath.ROOT.key("panels");

  @SuppressWarnings("unchecked")
  static RandomEdit of(Map<String, Object> plan, LaidOut laidOut, Random random) {
    Map<String, Object> wanted = (Map<String, Object>) copy(plan);
    List<Object> panels = (List<Object>) Objects.requireNonNull(wanted.get("panels"));
    int index = random.nextInt(panels.size());
    Map<String, Object> panel = (Map<String, Object>) panels.get(index);
    PlanPath at = PANELS.named("panel", "p" + index);
    String now = laidOut.value() + " now";
    switch (random.nextInt(11)) {
      case 0 -> {
        panel.put("action", now);
        boolean there = panel.containsKey("action");
        Kind kind = there ? Kind.REPLACES : Kind.ADDS;
        return new RandomEdit(kind, new TreeEdit.Put(at.key("action"), now), wanted);
      }
      case 1 -> {
        panel.put("length", now);
        return new RandomEdit(Kind.ADDS, new TreeEdit.Put(at.key("length"), now), wanted);
      }
      case 2 -> {
        String key = panel.keySet().stream().reduce((one, later) -> later).orElseThrow();
        panel.remove(key);
        TreeEdit gone =
            panel.isEmpty() ? new TreeEdit.Remove(at) : new TreeEdit.Remove(at.key(key));
        if (panel.isEmpty()) {
          panels.remove(index);
        }
        return new RandomEdit(Kind.REMOVES, gone, wanted);
      }
      case 3 -> {
        Map<String, Object> fresh = laidOut.panel("new");
        panels.add(index, fresh);
        return new RandomEdit(
            Kind.ADDS, new TreeEdit.Insert(PANELS.item(index), entry(fresh)), wanted);
      }
      case 4 -> {
        panels.remove(index);
        return new RandomEdit(Kind.REMOVES, new TreeEdit.Remove(at), wanted);
      }
      case 5 -> {
        int to = random.nextInt(panels.size());
        panels.add(to, panels.remove(index));
        return new RandomEdit(Kind.MOVES, new TreeEdit.Move(at, to), wanted);
      }
      case 6 -> {
        Map<String, Object> fresh = laidOut.table("opening", "shown");
        List<Object> reveals =
            (List<Object>) panel.computeIfAbsent("reveals", none -> new ArrayList<>());
        reveals.add(fresh);
        PlanPath item = at.key("reveals").item(reveals.size() - 1);
        return new RandomEdit(Kind.ADDS, new TreeEdit.Insert(item, entry(fresh)), wanted);
      }
      case 7 -> {
        Map<String, Object> motifs =
            (Map<String, Object>) Objects.requireNonNull(wanted.get("motifs"));
        Map<String, Object> renamed = new LinkedHashMap<>();
        motifs.forEach((key, value) -> renamed.put(key.equals("motif-0") ? "tide" : key, value));
        wanted.put("motifs", renamed);
        PlanPath motif = PlanPath.ROOT.key("motifs").key("motif-0");
        return new RandomEdit(Kind.REPLACES, new TreeEdit.Rename(motif, "tide"), wanted);
      }
      case 8 -> {
        Map<String, Object> fresh = laidOut.table("match", "notes");
        ((Map<String, Object>) Objects.requireNonNull(wanted.get("motifs"))).put("tide", fresh);
        PlanPath motif = PlanPath.ROOT.key("motifs").key("tide");
        return new RandomEdit(Kind.ADDS, new TreeEdit.Put(motif, entry(fresh)), wanted);
      }
      case 9 -> {
        Map<String, Object> fresh = laidOut.table("lens", "sensor");
        wanted.put("camera", fresh);
        PlanPath camera = PlanPath.ROOT.key("camera");
        return new RandomEdit(Kind.ADDS, new TreeEdit.Put(camera, entry(fresh)), wanted);
      }
      default -> {
        boolean there = panel.containsKey("field");
        Map<String, Object> fresh = laidOut.table("left", "top", "width", "height");
        panel.put("field", fresh);
        Kind kind = there ? Kind.REPLACES : Kind.ADDS;
        return new RandomEdit(kind, new TreeEdit.Put(at.key("field"), entry(fresh)), wanted);
      }
    }
  }

  private static Object copy(Object value) {
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>();
      list.forEach(item -> copy.add(copy(item)));
      return copy;
    }
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      map.forEach((key, one) -> copy.put((String) key, copy(one)));
      return copy;
    }
    return value;
  }

  private static Entry entry(Object value) {
    if (value instanceof List<?> list) {
      return Values.items(list.stream().map(RandomEdit::entry).toArray(Entry[]::new));
    }
    if (value instanceof Map<?, ?> map) {
      Entry.Keyed table = Values.keyed();
      for (Map.Entry<?, ?> member : map.entrySet()) {
        table = Values.with(table, (String) member.getKey(), entry(member.getValue()));
      }
      return table;
    }
    return Values.text((String) value);
  }
}
