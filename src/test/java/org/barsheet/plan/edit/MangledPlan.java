package org.barsheet.plan.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A plan in YAML laid out by chance, as many people's habits mix, that knows its texts' places. */
final class MangledPlan {

  /**
   * A text of the plan.
   *
   * @param from index of its first character, its anchor's where it has one
   * @param to index after its last character
   * @param value as it is read
   * @param shared number of the anchor it has or repeats, or −1
   */
  record Text(PlanPath at, int from, int to, String value, int shared) {}

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
          "tab\tinside");

  private final Random random;
  private final StringBuilder text = new StringBuilder();
  private final List<Text> texts = new ArrayList<>();
  private int anchors;

  /** Anchors that something must still repeat, and what they stand for. */
  private final List<Text> unrepeated = new ArrayList<>();

  MangledPlan(Random random) {
    this.random = random;
    if (chance(3)) {
      text.append("# a plan\n");
    }
    if (chance(4)) {
      text.append("---\n");
    }
    text.append("title:");
    value(PlanPath.ROOT.key("title"), "", false);
    endLine("");
    text.append("panels:");
    endLine("");
    int panels = 1 + random.nextInt(6);
    String indent = " ".repeat(random.nextInt(3));
    for (int i = 0; i < panels; i++) {
      panel(PlanPath.ROOT.key("panels").item(i), indent);
    }
    for (Text one : unrepeated) {
      PlanPath at = PlanPath.ROOT.key("again-" + one.shared());
      text.append("again-").append(one.shared()).append(": ");
      repeat(at, one);
      endLine("");
    }
    if (chance(3)) {
      text.setLength(text.length() - 1);
    }
  }

  String text() {
    return text.toString();
  }

  List<Text> texts() {
    return texts;
  }

  private boolean chance(int one) {
    return random.nextInt(one) == 0;
  }

  private void panel(PlanPath at, String indent) {
    text.append(indent).append('-').append(" ".repeat(1 + random.nextInt(2)));
    String inner = " ".repeat(text.length() - text.lastIndexOf("\n") - 1);
    if (chance(2)) {
      text.append('{');
      keys(at, ",", true, inner);
      text.append(chance(2) ? " }" : "}");
      endLine(indent);
    } else {
      keys(at, "\n" + inner, false, inner);
    }
  }

  private void keys(PlanPath at, String between, boolean flow, String indent) {
    List<String> keys = List.of("panel", "cue", "action", "cut").subList(0, 1 + random.nextInt(4));
    for (int i = 0; i < keys.size(); i++) {
      if (i > 0) {
        text.append(flow ? between + (chance(4) ? "\n" + indent + "  " : " ") : indent);
      }
      text.append(chance(6) ? "\"" + keys.get(i) + "\"" : keys.get(i)).append(":");
      value(at.key(keys.get(i)), indent, flow);
      if (!flow) {
        endLine(indent);
      }
    }
  }

  private void value(PlanPath at, String indent, boolean flow) {
    if (!flow && chance(8)) {
      texts.add(new Text(at, text.length(), text.length(), "", -1));
      return;
    }
    text.append(" ".repeat(1 + random.nextInt(3)));
    Text repeated = unrepeated.isEmpty() || chance(3) ? null : unrepeated.remove(0);
    if (repeated != null) {
      repeat(at, repeated);
      text.append(flow ? " " : "");
      return;
    }
    int from = text.length();
    int anchor = chance(6) ? anchors++ : -1;
    if (anchor >= 0) {
      text.append("&a").append(anchor).append(chance(3) ? "  " : " ");
    }
    if (chance(12)) {
      text.append("!!str ");
    }
    String value = VALUES.get(random.nextInt(VALUES.size()));
    write(value, indent, flow);
    Text own = new Text(at, from, text.length(), value, anchor);
    texts.add(own);
    if (anchor >= 0) {
      unrepeated.add(own);
    }
  }

  private void repeat(PlanPath at, Text one) {
    int from = text.length();
    text.append("*a").append(one.shared());
    texts.add(new Text(at, from, text.length(), one.value(), one.shared()));
  }

  private void write(String value, String indent, boolean flow) {
    switch (random.nextInt(flow ? 3 : 5)) {
      case 0 -> text.append("'").append(value.replace("'", "''")).append("'");
      case 1 -> text.append('"').append(value.replace("\"", "\\\"")).append('"');
      case 2 -> text.append(YamlScalar.plain(value, flow));
      default -> {
        text.append(chance(2) ? "|-" : ">-").append(chance(3) ? " # as it is" : "");
        text.append('\n').append(indent).append("   ").append(value);
      }
    }
  }

  private void endLine(String indent) {
    boolean block = text.substring(text.lastIndexOf("\n") + 1).startsWith(indent + "   ");
    text.append(!block && chance(4) ? "  # why: so" : "").append('\n');
    text.append(chance(6) ? "\n" : "").append(chance(8) ? indent + "# aside\n" : "");
  }
}
