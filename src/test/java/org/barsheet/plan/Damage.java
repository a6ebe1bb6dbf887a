package org.barsheet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Damages texts and bytes by chance, as slips of fingers, programs and disks do. */
final class Damage {

  private static final String[] INSERTED = {
    "\t",
    ":",
    ": ",
    "#",
    " #",
    "'",
    "\"",
    "[",
    "]",
    "{",
    "}",
    ",",
    "&a ",
    "*a ",
    "!x ",
    "|",
    ">",
    "%",
    "@",
    "`",
    "-",
    "- ",
    "? ",
    "\\",
    "\u00a0",
    "\u0000",
    "\ud83d\ude00",
    "\r",
    "\n",
    "~",
    "<<: ",
    "---\n",
    "...",
    "99999999999999999999",
    "-1",
    "0",
    "1e309",
    "NaN",
    "é",
    "\ufeff",
    "<",
    "&lt;",
    "</c>",
    "=1+1"
  };

  private Damage() {}

  /** One to four slips. */
  static String text(String text, Random random) {
    String damaged = text;
    for (int slips = 1 + random.nextInt(4); slips > 0; slips--) {
      damaged = slip(damaged, random);
    }
    return damaged;
  }

  private static String slip(String text, Random random) {
    if (text.isEmpty()) {
      return text;
    }
    int at = random.nextInt(text.length());
    return switch (random.nextInt(8)) {
      case 0 -> text.substring(0, at) + text.substring(at + 1);
      case 1, 2 ->
          text.substring(0, at) + INSERTED[random.nextInt(INSERTED.length)] + text.substring(at);
      case 3 -> text.substring(0, at);
      case 4 -> lines(text, random, Damage::deleteOne);
      case 5 -> lines(text, random, Damage::repeatOne);
      case 6 -> lines(text, random, Damage::indentOne);
      default -> exchangeWords(text, random);
    };
  }

  private interface LineDamage {
    void to(List<String> lines, int line, Random random);
  }

  private static String lines(String text, Random random, LineDamage damage) {
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    damage.to(lines, random.nextInt(lines.size()), random);
    return String.join("\n", lines);
  }

  private static void deleteOne(List<String> lines, int line, Random random) {
    lines.remove(line);
  }

  private static void repeatOne(List<String> lines, int line, Random random) {
    lines.add(random.nextInt(lines.size()), lines.get(line));
  }

  private static void indentOne(List<String> lines, int line, Random random) {
    lines.set(line, " ".repeat(random.nextInt(4)) + lines.get(line).strip());
  }

  private static String exchangeWords(String text, Random random) {
    List<String> words = new ArrayList<>(List.of(text.split("(?<=[ \n])|(?=[ \n])", -1)));
    Collections.swap(words, random.nextInt(words.size()), random.nextInt(words.size()));
    return String.join("", words);
  }

  /** Up to ten bytes changed, or the end lost. */
  static byte[] bytes(byte[] whole, Random random) {
    byte[] damaged = whole.clone();
    if (random.nextInt(3) == 0) {
      return java.util.Arrays.copyOf(damaged, random.nextInt(damaged.length));
    }
    for (int i = random.nextInt(10); i >= 0; i--) {
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
    }
    return damaged;
  }
}
