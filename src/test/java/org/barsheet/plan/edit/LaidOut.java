package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** A plan of maps, lists and texts, and its YAML laid out by chance as many people's habits mix. */
final class LaidOut {

  private static final List<String> VALUES =
      List.of(
          "glimmer 3",
          "bar 12 beat 2.5",
          "it's dawn",
          "a \"big\" lamp",
          "Fog: light",
          "é 😀 lamp",
          "01:00:12:00",
          "#28786E",
          "a, b",
          "yes",
          "1.10",
          "- x",
          "[x",
          "mark B # 2",
          "whole",
          "24");

  private static final List<String> PANEL =
      List.of("panel", "action", "cue", "cut", "field", "reveals", "appears");

  private final Random random;
  private final StringBuilder text = new StringBuilder();

  LaidOut(Random random) {
    this.random = random;
  }

  /** A plan by chance: texts, tables of texts, lists of tables. */
  Map<String, Object> plan() {
    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("title", value());
    plan.put("film", table("frame-rate", "first-frame", "shown"));
    Map<String, Object> motifs = new LinkedHashMap<>();
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      Map<String, Object> motif = table("match", "accent");
      motif.put("heard-at", table("place", "length", "part"));
      motifs.put("motif-" + i, motif);
    }
    plan.put("motifs", motifs);
    List<Object> panels = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(5); i++) {
      panels.add(panel("p" + i));
    }
    plan.put("panels", panels);
    plan.put("openings", new LinkedHashMap<>(Map.of("lamp", table("left", "top", "width"))));
    return plan;
  }

  Map<String, Object> panel(String name) {
    Map<String, Object> panel = new LinkedHashMap<>();
    panel.put("panel", name);
    for (String key : PANEL.subList(1, PANEL.size())) {
      if (random.nextInt(3) > 0) {
        panel.put(key, panelValue(key));
      }
    }
    return panel;
  }

  private Object panelValue(String key) {
    return switch (key) {
      case "field" -> random.nextBoolean() ? value() : table("left", "top", "width");
      case "reveals", "appears" -> {
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
          list.add(table("opening", "slow"));
        }
        yield list;
      }
      default -> value();
    };
  }

  Map<String, Object> table(String... keys) {
    Map<String, Object> table = new LinkedHashMap<>();
    for (String key : keys) {
      table.put(key, value());
    }
    return table;
  }

  String value() {
    return VALUES.get(random.nextInt(VALUES.size()));
  }

  private boolean chance(int one) {
    return random.nextInt(one) == 0;
  }

  /** Its YAML, with line feeds. */
  String yaml(Map<String, Object> plan) {
    text.setLength(0);
    text.append(chance(3) ? "# a plan:\twith a tab\n\n" : "").append(chance(4) ? "---\n" : "");
    block(plan, 0);
    text.append(chance(6) ? "...\n" : "");
    if (chance(5)) {
      text.setLength(text.length() - 1);
    }
    return text.toString();
  }

  private void block(Map<String, Object> table, int indent) {
    boolean first = true;
    for (Map.Entry<String, Object> member : table.entrySet()) {
      if (!first) {
        text.append(" ".repeat(indent));
      }
      first = false;
      text.append(key(member.getKey())).append(':');
      value(member.getValue(), indent);
    }
  }

  private String key(String key) {
    return chance(10) ? "\"" + key + "\"" : key;
  }

  @SuppressWarnings("unchecked")
  private void value(Object value, int indent) {
    boolean lines = !(value instanceof String) && chance(2);
    if (!lines) {
      text.append(" ".repeat(chance(5) ? 3 : 1)).append(flow(value, indent, false));
      endLine(indent, !text.substring(text.lastIndexOf("\n") + 1).isBlank());
      return;
    }
    endLine(indent, true);
    if (value instanceof List<?> list) {
      int dash = indent + List.of(0, 2, 4).get(random.nextInt(3));
      for (Object item : list) {
        item((Map<String, Object>) item, dash);
      }
    } else {
      int inner = indent + 1 + random.nextInt(6);
      text.append(" ".repeat(inner));
      block((Map<String, Object>) value, inner);
    }
  }

  private void item(Map<String, Object> item, int dash) {
    text.append(" ".repeat(dash)).append('-');
    int gap = 1 + (chance(4) ? random.nextInt(3) : 0);
    if (chance(2)) {
      text.append(" ".repeat(gap)).append(flow(item, dash, false));
      endLine(dash, true);
    } else if (chance(8)) {
      text.append("  # below\n").append(" ".repeat(dash + 2));
      block(item, dash + 2);
    } else {
      text.append(" ".repeat(gap));
      block(item, dash + 1 + gap);
    }
  }

  private String flow(Object value, int indent, boolean inside) {
    if (value instanceof String one) {
      return scalar(one, inside);
    }
    String pad = chance(4) ? " " : "";
    List<String> parts = new ArrayList<>();
    if (value instanceof List<?> list) {
      list.forEach(item -> parts.add(flow(item, indent, true)));
      return "[" + pad + String.join(comma(indent), parts) + pad + "]";
    }
    ((Map<?, ?>) value)
        .forEach((key, one) -> parts.add(key((String) key) + ": " + flow(one, indent, true)));
    return "{" + pad + String.join(comma(indent), parts) + pad + "}";
  }

  private String comma(int indent) {
    return chance(6)
        ? ",  # why\n" + " ".repeat(indent + 4)
        : chance(5) ? ",\n" + " ".repeat(indent + 3) : ", ";
  }

  private String scalar(String value, boolean inFlow) {
    return switch (random.nextInt(4)) {
      case 0 -> "'" + value.replace("'", "''") + "'";
      case 1 -> '"' + value.replace("\"", "\\\"") + '"';
      default -> YamlScalar.plain(value, inFlow);
    };
  }

  private void endLine(int indent, boolean comment) {
    text.append(comment && chance(4) ? "  # why: so\tand so" : "").append('\n');
    text.append(chance(6) ? "\n" : "").append(chance(8) ? " ".repeat(indent) + "# aside\n" : "");
  }
}
